#pragma once
/// @file
/// The involute function and its inverse, on which the geometry of gear teeth rests.

#include "spotblue/base/export.hpp"

namespace spotblue {

/// inv(x) = tan(x) - x.
///
/// @param angle_rad  pressure angle, 0 <= x < pi/2.
/// @throws Error bad_input outside that range.
///
/// Accuracy: 1e-13 of the value; a series near 0, where the difference would lose its digits.
/// Source: the definition of the involute of a circle; any gear text.
/// Checked by: tests/mechanics/involute_test.cpp, printed tables.
[[nodiscard]] SPOTBLUE_EXPORT double involute(double angle_rad);

/// The angle whose involute function is `value`, rad.
///
/// @param value  >= 0.
/// @throws Error bad_input when it is negative or not finite.
///
/// Accuracy: 1e-14 rad up to 80 degrees. Newton's steps from above: the function is convex, so
/// that they never overshoot.
[[nodiscard]] SPOTBLUE_EXPORT double involute_inverse(double value);

}  // namespace spotblue
