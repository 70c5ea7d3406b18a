#pragma once
// How the text of a STEP file places the components of its assemblies.

#include <string>
#include <vector>

#include "geometry/part21/step_text.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// A note for each component that the file does not place: it stands at its assembly's origin.
// Throws Error unreadable for one placed by an operator, which may mirror or scale: Open CASCADE
// puts it at the origin instead.
[[nodiscard]] std::vector<Note> check_placements(const StepText& text, const std::string& file);

}  // namespace spotblue
