#pragma once
// How far each size may go while the others can follow, where demands share
// several sizes too.

#include <vector>

#include "mechanics/suit_bounds.hpp"

namespace spotblue {

// As suit_bounds, and exact whatever the rows share: by linear programmes where they are no tree,
// among sizes up to ten times the largest one drawn (by size, mm). A contradiction names rows none
// of which can be left out; its size is one of the first of them.
[[nodiscard]] SuitBounds exact_suit_bounds(const std::vector<SuitRow>& rows,
                                           const std::vector<Interval>& start,
                                           const std::vector<double>& drawn);

}  // namespace spotblue
