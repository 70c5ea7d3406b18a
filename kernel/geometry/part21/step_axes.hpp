#pragma once
// Whether the directions and axis placements in a STEP file's text say where they point.

#include <vector>

#include "geometry/part21/step_text.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// About each direction and placement ("#12, DIRECTION") for which Open CASCADE would take a default
// without a word: of no length, of more or fewer than three numbers, of other entities, or with its
// two directions in one line.
[[nodiscard]] std::vector<Note> axis_faults(const StepText& text);

}  // namespace spotblue
