#pragma once
// The clearance that a pair may have once everything is pressed.

#include "group/rings/surface_sizes.hpp"

namespace spotblue {

/// All clearances of a hole and a shaft of these sizes, mm.
[[nodiscard]] Limits clearance_between(Interval hole, Interval shaft);
/// All clearances that the two may have once everything is pressed; of the sizes they are made to
/// where what pressing does is not known.
[[nodiscard]] Limits assembled_clearance(const SurfaceSizes& surface);
/// Why that is not known: "no material is given for Bush"; empty where it is.
[[nodiscard]] Saying why_not_assembled(const SurfaceSizes& surface);

}  // namespace spotblue
