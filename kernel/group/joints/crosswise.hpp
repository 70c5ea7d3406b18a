#pragma once
// Whether what holds a shaft comes from its side or lies along it.

#include <cmath>

#include "spotblue/geometry/vector.hpp"

namespace spotblue {

/// How far from square, as a sine: a drilled hole is never truer. Choice of this program, no
/// source.
inline constexpr double kSquare = 0.1;

[[nodiscard]] inline bool is_across(Direction a, Direction b) {
  return std::abs(dot(a, b)) <= kSquare;
}
[[nodiscard]] inline bool is_along(Direction a, Direction b) {
  return std::abs(dot(a, b)) >= 1.0 - kSquare * kSquare;
}

}  // namespace spotblue
