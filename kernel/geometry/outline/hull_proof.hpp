#pragma once
/// @file
/// Two parts proved clear by a hull of one: see clear_pair.hpp.

#include "geometry/outline/clear_pair.hpp"

namespace spotblue::proof {

/// No face of one enters a convex hull of the other, and the hull is not inside.
[[nodiscard]] bool hull_apart(const Pair& pair);

}  // namespace spotblue::proof
