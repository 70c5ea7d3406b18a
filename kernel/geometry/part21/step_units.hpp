#pragma once
// The units that the text of a STEP file gives lengths and angles in.

#include <vector>

#include "geometry/part21/step_mapped.hpp"
#include "geometry/part21/step_text.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// About each unit of lengths or angles that shapes of products are given in, and that Open CASCADE
// would take for millimetres or radians because it can not follow it: what of it can not be read.
[[nodiscard]] std::vector<Note> unit_faults(const StepText& text,
                                            const RepresentationOwners& owners);

}  // namespace spotblue
