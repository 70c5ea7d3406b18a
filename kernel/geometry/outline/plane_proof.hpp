#pragma once
/// @file
/// Two parts proved clear by a plane between them: see clear_pair.hpp.

#include "geometry/outline/clear_pair.hpp"

namespace spotblue::proof {

/// Oriented boxes apart along one of their 15 directions.
[[nodiscard]] bool boxes_apart(const Pair& pair);
/// A plane square to a normal of either's plane faces with one part on each side.
[[nodiscard]] bool planes_apart(const Pair& pair);

}  // namespace spotblue::proof
