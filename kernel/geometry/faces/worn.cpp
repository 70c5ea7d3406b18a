#include "geometry/faces/worn.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/faces/feature_merge.hpp"
#include "geometry/model/tolerances.hpp"
#include "spotblue/base/angle.hpp"

namespace spotblue {
namespace {

// A taper pin of 1 in 50 is steeper, 0.57 degrees. Choice of this program, no source.
constexpr double kSlow = 0.5 * kDegree;

bool is_one_size(const DiameterAt& size) { return size.greatest - size.least < kNoLength; }

}  // namespace

Interval diameters_at(const Cylinder& cylinder, double at) {
  const std::vector<DiameterAt>& sizes = cylinder.sizes;
  if (sizes.empty()) {
    return {cylinder.diameter, cylinder.diameter};
  }
  if (sizes.size() == 1) {
    return {sizes[0].least, sizes[0].greatest};
  }
  auto next = std::find_if(sizes.begin() + 1, sizes.end() - 1,
                           [&](const DiameterAt& size) { return size.at >= at; });
  const DiameterAt& one = *(next - 1);
  const DiameterAt& two = *next;
  const double share = two.at > one.at ? (at - one.at) / (two.at - one.at) : 0.0;
  // Past its ends only a taper goes on as it does within.
  const double within = taper_of(cylinder) != 0.0 ? share : std::clamp(share, 0.0, 1.0);
  return {one.least + within * (two.least - one.least),
          one.greatest + within * (two.greatest - one.greatest)};
}

Interval diameters_over(const Cylinder& cylinder, double from, double to) {
  Interval range = diameters_at(cylinder, from);
  const auto take = [&](Interval other) {
    range = {std::min(range.low, other.low), std::max(range.high, other.high)};
  };
  take(diameters_at(cylinder, to));
  for (const DiameterAt& size : cylinder.sizes) {
    if (size.at > from && size.at < to) {
      take({size.least, size.greatest});
    }
  }
  return range;
}

double taper_of(const Cylinder& cylinder) {
  const std::vector<DiameterAt>& sizes = cylinder.sizes;
  if (sizes.size() != 2 || !is_one_size(sizes[0]) || !is_one_size(sizes[1])) {
    return 0.0;
  }
  return 0.5 * (sizes[1].least - sizes[0].least) / (sizes[1].at - sizes[0].at);
}

bool is_out_of_form(const Cylinder& cylinder) {
  return !cylinder.sizes.empty() && taper_of(cylinder) == 0.0;
}

void keep_sizes_on_stretches(Cylinder& cylinder) {
  if (cylinder.sizes.empty()) {
    return;
  }
  const double from = cylinder.intervals.front().low;
  const double to = cylinder.intervals.back().high;
  std::vector<DiameterAt> kept;
  const auto keep = [&](double at) {
    const Interval range = diameters_at(cylinder, at);
    kept.push_back({at, range.low, range.high});
  };
  keep(from);
  for (const DiameterAt& size : cylinder.sizes) {
    if (size.at > from && size.at < to) {
      kept.push_back(size);
    }
  }
  keep(to);
  cylinder.sizes = std::move(kept);
  const Interval over = diameters_over(cylinder, from, to);
  cylinder.diameter = 0.5 * (over.low + over.high);
}

void take_slow_cones(Product& product) {
  for (Cone& cone : product.cones) {
    if (cone.half_angle > kSlow) {
      continue;
    }
    const double from = cone.intervals.front().low;
    const double to = cone.intervals.back().high;
    const double middle = 0.5 * (from + to);
    const double slope = std::tan(cone.half_angle);
    const double narrow = 2.0 * (cone.radius + from * slope);
    const double wide = 2.0 * (cone.radius + to * slope);
    // Stations run the way the axis does, which may be the other way than a cone's.
    const double sense = dot(canonical(cone.axis.along), cone.axis.along) > 0.0 ? 1.0 : -1.0;
    Cylinder cylinder;
    cylinder.side = cone.side;
    cylinder.axis = {at_station(cone.axis, middle), sense > 0 ? cone.axis.along : -cone.axis.along};
    cylinder.zero = cone.zero;
    cylinder.diameter = 0.5 * (narrow + wide);
    cylinder.sizes = {{sense * (from - middle), narrow, narrow},
                      {sense * (to - middle), wide, wide}};
    for (const Patch& patch : cone.patches) {
      const auto [low, high] =
          std::minmax({sense * (patch.from - middle), sense * (patch.to - middle)});
      cylinder.patches.push_back(
          {low, high, recounted_arcs(patch.arcs, 0.0, sense > 0.0 ? 1 : -1)});
    }
    for (const auto& [first, last] : cone.intervals) {
      const auto [low, high] = std::minmax({sense * (first - middle), sense * (last - middle)});
      cylinder.intervals.push_back({low, high});
    }
    if (sense < 0.0) {
      std::reverse(cylinder.sizes.begin(), cylinder.sizes.end());
      std::reverse(cylinder.intervals.begin(), cylinder.intervals.end());
    }
    cylinder.coverage = cone.coverage;
    cylinder.source = cone.source;
    cylinder.deviation = cone.deviation;
    product.cylinders.push_back(std::move(cylinder));
  }
  std::erase_if(product.cones, [](const Cone& cone) { return cone.half_angle <= kSlow; });
}

}  // namespace spotblue
