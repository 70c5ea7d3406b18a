#pragma once
// The row that a piece of the solids' overlap becomes, held against what the numbers tell.

#include <span>
#include <vector>

#include "geometry/fouls/exact_overlap.hpp"
#include "geometry/fouls/seat_foul.hpp"
#include "spotblue/geometry/foul.hpp"

namespace spotblue::proof {

/// A told foul as its piece of the solids' overlap shows it: the numbers where both agree.
[[nodiscard]] Foul measured(const OverlapRegion& region, std::span<const ToldFoul* const> told);

/// Those of the told fouls that a piece of the overlap shows.
[[nodiscard]] std::vector<const ToldFoul*> shown_by(const OverlapRegion& region,
                                                    const std::vector<ToldFoul>& told);

}  // namespace spotblue::proof
