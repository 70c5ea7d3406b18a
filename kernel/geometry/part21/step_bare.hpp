#pragma once
// Parts that the text of a STEP file draws by other things than solids.

#include <vector>

#include "geometry/part21/step_declared.hpp"
#include "geometry/part21/step_text.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// A note by name for each product that has no solid of its own but is drawn by triangles or curves:
// nothing of it arrives. Curves of an assembly are taken for construction; faces that bound no
// solid arrive and are told of then (note_loose_faces).
[[nodiscard]] std::vector<Note> bare_parts(const StepText& text, const Declared& declared);

}  // namespace spotblue
