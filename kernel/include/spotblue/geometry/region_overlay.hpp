#pragma once
/// @file
/// What two plane regions share, and what one has without the other; exact for lines and arcs.

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/region.hpp"

namespace spotblue {

/// What both regions cover. Edges that run on one another are recognised within 1e-7 mm: what is
/// shared by less than that in width is nothing. A seam inside a region (two edges of opposite
/// sense on one another, as where two faces of one plane meet) counts as no boundary.
[[nodiscard]] SPOTBLUE_EXPORT Region intersect(const Region& a, const Region& b);
/// What `a` covers and `b` does not; tolerance and seams as for intersect().
[[nodiscard]] SPOTBLUE_EXPORT Region subtract(const Region& a, const Region& b);

}  // namespace spotblue
