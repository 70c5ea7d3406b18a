#include "geometry/candidates/round_ends.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "geometry/model/coaxial.hpp"
#include "geometry/model/round_end.hpp"
#include "spotblue/base/angle.hpp"

namespace spotblue {
namespace {

constexpr double kNoGap = 1e-4;  // mm

// Axes of the cylinders that round a width's ends, placed.
std::vector<Line> end_axes(const PlacedWidth& placed) {
  std::vector<Line> found;
  for (const Cylinder& c : placed.product.cylinders) {
    if (rounds_end(placed.product, placed.width, c)) {
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
  if (norm(along) < kNoGap) {
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
