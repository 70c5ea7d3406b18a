#pragma once
/// @file
/// Degrees, in which people, settings and reports speak, and radians, in which all else is.

#include <numbers>

namespace spotblue {

/// One degree, rad.
inline constexpr double kDegree = std::numbers::pi / 180.0;

/// An angle given in radians, in degrees.
[[nodiscard]] constexpr double degrees(double rad) { return rad * 180.0 / std::numbers::pi; }

/// An angle given in degrees, in radians.
[[nodiscard]] constexpr double radians(double deg) { return deg * std::numbers::pi / 180.0; }

}  // namespace spotblue
