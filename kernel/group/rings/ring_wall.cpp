#include "group/rings/ring_wall.hpp"

#include <algorithm>

namespace spotblue {
namespace {

// How much the loaded surface gives for 1 MPa on a ring as large as the joint; the load on the ring
// that is left stands on a surface of another size.
double give(const Ring& ring, double joint, bool from_inside) {
  const double surface = from_inside ? ring.inner_mm : ring.outer_mm;
  const double pressure = joint / surface;
  return from_inside ? loaded_ring(ring, {pressure, 0.0}).bore_change_mm
                     : -loaded_ring(ring, {0.0, pressure}).outside_change_mm;
}

}  // namespace

std::optional<Ring> plain_ring(const RingWall& wall, WallBound bound) {
  const bool strong = bound == WallBound::strongest;
  const Ring left{strong ? wall.begins.low : wall.begins.high,
                  strong ? wall.ends.high : wall.ends.low, wall.material};
  if (!(left.outer_mm > left.inner_mm)) {
    return std::nullopt;
  }
  Ring plain = left;
  plain.inner_mm = wall.joint_inside.value_or(left.inner_mm);
  plain.outer_mm = wall.joint_outside.value_or(left.outer_mm);
  if (!(plain.outer_mm > plain.inner_mm)) {
    return std::nullopt;
  }
  double weaker = 1.0;
  if (wall.joint_inside && left.inner_mm > plain.inner_mm) {
    weaker = give(plain, *wall.joint_inside, true) / give(left, *wall.joint_inside, true);
  }
  if (wall.joint_outside && left.outer_mm < plain.outer_mm) {
    weaker = std::min(
        weaker, give(plain, *wall.joint_outside, false) / give(left, *wall.joint_outside, false));
  }
  plain.material.youngs_modulus_mpa *=
      std::min(weaker, 1.0) * (strong ? wall.stiffness.high : wall.stiffness.low);
  return plain;
}

}  // namespace spotblue
