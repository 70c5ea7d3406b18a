#include "geometry/ways/way_slot.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace spotblue::proof {

Interval told_from(Interval span, double zero) { return {span.low - zero, span.high - zero}; }

std::optional<Slot> slot_about(const Model& model, const FeatureRef& feature, const Line& line) {
  const Occurrence& occurrence = model.occurrences.at(feature.occurrence);
  const Product& product = model.products.at(occurrence.product);
  const Width& width = product.widths.at(feature.index);
  Slot slot;
  slot.half = 0.5 * width.width;
  slot.across = place_direction(occurrence.frame, product.planes.at(width.first).normal);
  if (std::abs(dot(slot.across, line.along)) > kWayParallel) {
    return {};
  }
  slot.out = unit(cross(line.along, slot.across));
  Interval depth{-std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
  slot.z = depth;
  const Frame back = inverse(occurrence.frame);
  const Line own = place_line(back, line);
  const Direction out = place_direction(back, slot.out);
  for (const std::size_t side : {width.first, width.second}) {
    const Plane& plane = product.planes.at(side);
    const Flat flat{.at = plane.at,
                    .normal = plane.normal,
                    .u = plane.u,
                    .v = third(plane.normal, plane.u),
                    .outline = &plane.outline,
                    .slack = 0.0,
                    .box = {}};
    const Interval z = told_from(extent(flat, own.along), dot(own.along, own.at));
    const Interval q = told_from(extent(flat, out), dot(out, own.at));
    slot.z = {std::max(slot.z.low, z.low), std::min(slot.z.high, z.high)};
    depth = {std::max(depth.low, q.low), std::min(depth.high, q.high)};
  }
  if (depth.low + depth.high < 0.0) {
    depth = {-depth.high, -depth.low};
    slot.out = -slot.out;
  }
  slot.floor = depth.low;
  slot.top = depth.high;
  return slot;
}

}  // namespace spotblue::proof
