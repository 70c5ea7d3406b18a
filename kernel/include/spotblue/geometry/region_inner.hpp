#pragma once
/// @file
/// Points inside a plane region.

#include <cstddef>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/region.hpp"

namespace spotblue {

/// At most `count` points well inside the region and spread over it, always the same ones; none for
/// an empty region.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<Point2> inner_points(const Region& region,
                                                               std::size_t count);

}  // namespace spotblue
