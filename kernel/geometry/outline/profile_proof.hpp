#pragma once
/// @file
/// Two parts proved clear by what they occupy about a line: see clear_pair.hpp.

#include "geometry/outline/clear_pair.hpp"

namespace spotblue::proof {

/// What they occupy about some line they may share does not overlap.
[[nodiscard]] bool profiles_apart(const Pair& pair);

}  // namespace spotblue::proof
