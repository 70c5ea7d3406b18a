#pragma once
// Stretches along a shaft's axis, and what lies about the same axis.

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

/// Choices of this program, no source.
inline constexpr double kSquareToAxis_rad = 1e-3;
inline constexpr double kOnAxis_mm = 0.05;

struct Stretch {
  double from = std::numeric_limits<double>::infinity();
  double to = -std::numeric_limits<double>::infinity();
  void take(double s) {
    from = std::min(from, s);
    to = std::max(to, s);
  }
  /// How far the other lies beyond; negative: the length they share, or the shorter's when inside.
  [[nodiscard]] double gap_to(const Stretch& other) const {
    return std::max(other.from - to, from - other.to);
  }
  [[nodiscard]] double length() const { return to - from; }
};

/// Each piece of a cylinder or a cone, as it lies on the axis.
template <class Feature>
[[nodiscard]] std::vector<Stretch> pieces_on(const Line& axis, const Feature& feature) {
  std::vector<Stretch> pieces;
  for (const auto& [from, to] : feature.intervals) {
    Stretch piece;
    piece.take(station(axis, at_station(feature.axis, from)));
    piece.take(station(axis, at_station(feature.axis, to)));
    pieces.push_back(piece);
  }
  return pieces;
}

/// Whether a piece of the feature shares more than nothing with the stretch.
template <class Feature>
[[nodiscard]] bool lies_in(const Line& axis, const Feature& feature, const Stretch& stretch) {
  return std::ranges::any_of(pieces_on(axis, feature), [&stretch](const Stretch& piece) {
    return stretch.gap_to(piece) < -kOnAxis_mm;
  });
}

[[nodiscard]] inline bool coaxial(const Line& axis, const Line& other) {
  return angle_between_lines(axis.along, other.along) < kSquareToAxis_rad &&
         distance(axis, other.at) < kOnAxis_mm;
}

[[nodiscard]] inline bool square_to(Direction a, Direction b) {
  return std::abs(dot(a, b)) < kSquareToAxis_rad;
}

}  // namespace spotblue
