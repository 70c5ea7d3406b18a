#include "geometry/width_features.hpp"

#include <cmath>
#include <limits>
#include <optional>

#include "geometry/plane_map.hpp"

namespace spotblue {
namespace {

constexpr double kOppositeTilt = 1e-7;  // rad
constexpr double kLeastArea = 1e-6;     // mm2: below that two outlines only touch

bool outlines_meet(const Plane& a, const Plane& b) {
  const Region other = outline_in(a, b, Frame{});
  const Extent2 ea = extent(a.outline);
  const Extent2 eb = extent(other);
  const double u = std::min(ea.high.u, eb.high.u) - std::max(ea.low.u, eb.low.u);
  const double v = std::min(ea.high.v, eb.high.v) - std::max(ea.low.v, eb.low.v);
  if (u <= 1e-9 || v <= 1e-9) {
    return false;
  }
  // Seen from a the other outline is turned over; only what it covers matters here.
  return std::abs(area(intersect(a.outline, other))) > kLeastArea;
}

struct Opposite {
  std::size_t plane;
  double distance;
};

std::optional<Opposite> nearest_opposite(const Product& product, std::size_t from, Side side) {
  std::optional<Opposite> best;
  const Plane& a = product.planes[from];
  for (std::size_t j = 0; j < product.planes.size(); ++j) {
    const Plane& b = product.planes[j];
    if (j == from || norm(a.normal + b.normal) > kOppositeTilt) {
      continue;
    }
    const double ahead = dot(b.at - a.at, a.normal);
    const double away = side == Side::internal ? ahead : -ahead;
    if (away > 1e-6 && (!best || away < best->distance) && outlines_meet(a, b)) {
      best = Opposite{j, away};
    }
  }
  return best;
}

}  // namespace

void find_widths(Product& product) {
  for (const Side side : {Side::internal, Side::external}) {
    std::vector<std::optional<Opposite>> opposite;
    for (std::size_t i = 0; i < product.planes.size(); ++i) {
      opposite.push_back(nearest_opposite(product, i, side));
    }
    for (std::size_t i = 0; i < opposite.size(); ++i) {
      if (opposite[i] && opposite[i]->plane > i && opposite[opposite[i]->plane] &&
          opposite[opposite[i]->plane]->plane == i) {
        Width width;
        width.side = side;
        width.first = i;
        width.second = opposite[i]->plane;
        width.width = opposite[i]->distance;
        product.widths.push_back(std::move(width));
      }
    }
  }
}

}  // namespace spotblue
