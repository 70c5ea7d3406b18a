#include "group/rings/beyond_joint.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace spotblue {
namespace {

// 1/(1 + exp(-3 pi/4)/sqrt(2)): the middle gives the most where beta a = 3 pi/4.
constexpr double kLeast = 0.937;

// Metal beyond counts from the first of these shares of the joint's length on and fully from the
// second: less is a lead-in or a thin flange. Choice of this program, no source.
constexpr double kFrom = 0.12;
constexpr double kFully = 0.24;

// Of the part, on the axis; nothing of it lies beyond.
Interval reach_on(const Model& model, OccurrenceId part, const Line& axis, Interval joint) {
  const Occurrence& placed = model.occurrences[part];
  const Box& box = model.products[placed.product].box;
  if (is_empty(box)) {
    return joint;
  }
  Interval reach = joint;
  for (const double x : {box.low.x, box.high.x}) {
    for (const double y : {box.low.y, box.high.y}) {
      for (const double z : {box.low.z, box.high.z}) {
        const double at = station(axis, place_point(placed.frame, {x, y, z}));
        reach = {std::min(reach.low, at), std::max(reach.high, at)};
      }
    }
  }
  return reach;
}

}  // namespace

Interval stiffness_beyond(const Model& model, OccurrenceId part, const RadialSeat& joint,
                          const Ring& ring) {
  const Interval pressed{joint.from, joint.to};
  if (!(pressed.length() > 0.0) || !(ring.inner_mm > 0.0) || !(ring.outer_mm > ring.inner_mm)) {
    return {1.0, 1.0};
  }
  const double radius = 0.25 * (ring.inner_mm + ring.outer_mm);
  const double wall = 0.5 * (ring.outer_mm - ring.inner_mm);
  const double nu = ring.material.poisson_ratio;
  const double dies_away = std::sqrt(radius * wall) / std::pow(3.0 * (1.0 - nu * nu), 0.25);
  const Interval reach = reach_on(model, part, joint.axis, pressed);
  const double more =
      std::min(pressed.low - reach.low, dies_away) + std::min(reach.high - pressed.high, dies_away);
  const double share = more / pressed.length();
  const double counts = std::clamp((share - kFrom) / (kFully - kFrom), 0.0, 1.0);
  return {1.0 - counts * (1.0 - kLeast), 1.0 + counts * share};
}

}  // namespace spotblue
