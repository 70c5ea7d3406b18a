#pragma once
/// @file
/// From one value to another.

#include <algorithm>

namespace spotblue {

/// low <= high, unless it says that it is empty by the other order; in the unit of what it is of.
struct Interval {
  double low = 0.0, high = 0.0;

  [[nodiscard]] constexpr double length() const { return high - low; }
  /// 0 is low, 1 is high.
  [[nodiscard]] constexpr double at(double share) const { return low + share * (high - low); }
};

/// From the lesser of the two to the greater.
[[nodiscard]] constexpr Interval ordered(double one, double other) {
  return {std::min(one, other), std::max(one, other)};
}

/// The least interval that holds both.
[[nodiscard]] constexpr Interval united(Interval a, Interval b) {
  return {std::min(a.low, b.low), std::max(a.high, b.high)};
}

/// How long a stretch the two share; negative: how far they are apart.
[[nodiscard]] constexpr double shared_length(Interval a, Interval b) {
  return std::min(a.high, b.high) - std::max(a.low, b.low);
}

}  // namespace spotblue
