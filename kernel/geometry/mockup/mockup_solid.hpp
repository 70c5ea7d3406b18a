#pragma once
// Solids of a mock-up's parts.

#include <TopoDS_Shape.hxx>

#include "geometry/mockup/mockup_check.hpp"
#include "spotblue/geometry/mockup_part.hpp"

namespace spotblue {

/// The part as one valid solid in its own frame. The part must have passed check_parts. Throws
/// Error bad_input for cuts that miss it or break it up, open_cascade_failed when Open CASCADE
/// fails.
[[nodiscard]] TopoDS_Shape make_solid(const MockupPlace& place, const MockupPart& part);

}  // namespace spotblue
