#pragma once
/// @file
/// Degrees, in which people and settings speak, in radians.

#include <numbers>

namespace spotblue {

inline constexpr double kDegree = std::numbers::pi / 180.0;

}  // namespace spotblue
