#include "geometry/candidates/round_ends.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "geometry/model/coaxial.hpp"
#include "spotblue/base/angle.hpp"

namespace spotblue {
namespace {

// What an end may differ from half a circle across the whole width. Choices of this program, no
// source.
constexpr double kLeastRound = 150.0 * kDegree;
constexpr double kMostRound = 210.0 * kDegree;
constexpr double kSameWidth = 1e-4;
constexpr double kSquareToFlanks = 1e-4;

// Axes of the cylinders that round a width's ends, placed.
std::vector<Line> end_axes(const PlacedWidth& placed) {
  const Plane& one = placed.product.planes[placed.width.first];
  const Plane& two = placed.product.planes[placed.width.second];
  const Point middle = 0.5 * (one.at + two.at);
  std::vector<Line> found;
  for (const Cylinder& c : placed.product.cylinders) {
    if (c.side == placed.width.side && c.coverage > kLeastRound && c.coverage < kMostRound &&
        std::abs(c.diameter - placed.width.width) < kSameWidth &&
        std::abs(dot(c.axis.along, one.normal)) < kSquareToFlanks &&
        std::abs(dot(c.axis.at - middle, one.normal)) < kSameWidth) {
      found.push_back(place_line(placed.frame, c.axis));
    }
  }
  return found;
}

}  // namespace

std::optional<double> round_ends_apart(const PlacedWidth& slot, const PlacedWidth& key) {
  const std::vector<Line> of_key = end_axes(key);
  if (of_key.size() != 2) {
    return std::nullopt;
  }
  const std::vector<Line> of_slot = end_axes(slot);
  const Line& start = of_key.front();
  const Point across = of_key.back().at - start.at;
  const Point along = across - dot(across, start.along) * start.along;
  if (norm(along) < kSameWidth) {
    return std::nullopt;
  }
  const Direction out = unit(along);
  const double middle = 0.5 * norm(along);
  std::optional<double> before;
  std::optional<double> behind;
  for (const Line& end : of_slot) {
    if (!parallel_within(end.along, start.along, kDegree)) {
      continue;
    }
    const double at = dot(end.at - start.at, out) - middle;
    if (at < 0.0) {
      before = std::max(before.value_or(at), at);
    } else {
      behind = std::min(behind.value_or(at), at);
    }
  }
  if (!before || !behind) {
    return std::nullopt;
  }
  return *behind - *before + slot.width.width - norm(along) - key.width.width;
}

}  // namespace spotblue
