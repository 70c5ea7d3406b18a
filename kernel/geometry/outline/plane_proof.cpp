#include "geometry/outline/plane_proof.hpp"

#include <algorithm>
#include <array>
#include <vector>

#include "geometry/model/tolerances.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue::proof {
namespace {

/// dot(d, x) over b, for a direction of a's frame.
Interval placed_extent(const Pair& pair, Direction d, const auto& what) {
  const double shift = dot(d, place_point(pair.b_to_a, {}));
  const Interval span = extent(what, place_direction(pair.a_to_b, d));
  return {span.low + shift, span.high + shift};
}

/// Whether all the overlap lies within a band the seats account for.
bool in_band(const Pair& pair, Direction d, Interval overlap) {
  return std::ranges::any_of(pair.accounted.bands, [&](const Band& band) {
    if (norm(cross(d, band.normal)) > kSameDirection) {
      return false;
    }
    const double sign = dot(d, band.normal) > 0.0 ? 1.0 : -1.0;
    const double at = dot(d, band.at);
    const double one = at + sign * band.low;
    const double other = at + sign * band.high;
    return overlap.low >= std::min(one, other) - pair.same_length &&
           overlap.high <= std::max(one, other) + pair.same_length;
  });
}

bool apart_along(const Pair& pair, Direction d) {
  const Interval a = extent(pair.a, d);
  const Interval b = placed_extent(pair, d, pair.b);
  return shared_length(a, b) <= pair.same_length ||
         in_band(pair, d, {std::max(a.low, b.low), std::min(a.high, b.high)});
}

}  // namespace

bool boxes_apart(const Pair& pair) {
  const std::array<Direction, 3> mine{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
  std::vector<Direction> directions(mine.begin(), mine.end());
  for (const Direction axis : mine) {
    directions.push_back(place_direction(pair.b_to_a, axis));
  }
  for (std::size_t i = 0; i < 3; ++i) {
    for (std::size_t j = 3; j < 6; ++j) {
      const Point square = cross(directions[i], directions[j]);
      if (norm(square) > kOneDirection) {
        directions.push_back(unit(square));
      }
    }
  }
  return std::ranges::any_of(directions, [&](Direction d) {
    return shared_length(extent(pair.a.box, d), placed_extent(pair, d, pair.b.box)) <=
           pair.same_length;
  });
}

bool planes_apart(const Pair& pair) {
  std::vector<Direction> tried;
  const auto apart = [&](Direction d) {
    const bool known = std::ranges::any_of(
        tried, [&](Direction t) { return norm(cross(t, d)) < kTriedDirection; });
    if (known) {
      return false;
    }
    tried.push_back(d);
    stop_if_asked();
    return apart_along(pair, d);
  };
  return std::ranges::any_of(pair.a.normals, apart) ||
         std::ranges::any_of(pair.b.normals,
                             [&](Direction n) { return apart(place_direction(pair.b_to_a, n)); });
}

}  // namespace spotblue::proof
