#pragma once
// The row that a piece of the solids' overlap becomes, held against what the numbers tell.

#include <span>
#include <vector>

#include "geometry/fouls/exact_overlap.hpp"
#include "geometry/fouls/foul.hpp"
#include "spotblue/geometry/clash.hpp"

namespace spotblue::proof {

/// A told clash as its piece of the solids' overlap shows it: the numbers where both agree.
[[nodiscard]] Clash measured(const OverlapRegion& region, std::span<const ToldClash* const> told);

/// Those of the told clashes that a piece of the overlap shows.
[[nodiscard]] std::vector<const ToldClash*> shown_by(const OverlapRegion& region,
                                                     const std::vector<ToldClash>& told);

}  // namespace spotblue::proof
