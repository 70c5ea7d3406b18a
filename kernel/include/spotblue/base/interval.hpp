#pragma once
/// @file
/// From one value to another.

#include <algorithm>
#include <compare>

namespace spotblue {

/// low <= high, unless it says that it is empty by the other order; in the unit of what it is of.
struct Interval {
  double low = 0.0, high = 0.0;

  [[nodiscard]] constexpr double length() const { return high - low; }
  /// 0 is low, 1 is high.
  [[nodiscard]] constexpr double at(double share) const { return low + share * (high - low); }
  constexpr auto operator<=>(const Interval&) const = default;
};
constexpr void describe(auto& fields, const Interval*) {
  fields.value("Interval", "From one value to another.")
      .member("low", &Interval::low, "in the unit of what it is of")
      .member("high", &Interval::high, "the same; less than low where it is empty");
}

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
