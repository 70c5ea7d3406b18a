#pragma once
/// @file
/// Directions of the kernel as points in Python, which are made 1 long on their way in.

#include "python/values/crossing.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/vector.hpp"

namespace spotblue::python {

/// @throws Error bad_input for a zero.
[[nodiscard]] inline Direction direction_of(const Point& point) {
  const double length = norm(point);
  if (!(length > 0.0)) {
    throw Error(ErrorCode::bad_input, {"", "Point"}, "(0, 0, 0) has no direction",
                "give a vector with a length");
  }
  return length == 1.0 ? Direction(point) : unit(point);
}

template <>
struct Crossing<Direction> {
  static Point out(Direction held) { return held; }
  static Direction in(const Point& given) { return direction_of(given); }
};

}  // namespace spotblue::python
