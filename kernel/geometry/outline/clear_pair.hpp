#pragma once
/// @file
/// Proofs that two placed parts share no material beyond what their seats account for. Each may
/// fail to prove what is so; none ever proves what is not.

#include "geometry/faces/face_bounds.hpp"
#include "geometry/seats/accounted.hpp"

namespace spotblue::proof {

/// Two parts in the first one's frame.
struct Pair {
  const FaceBounds& a;
  const FaceBounds& b;
  Frame b_to_a, a_to_b;
  const Accounted& accounted;  ///< in a's frame
  double same_length = 0.0;    ///< thinner overlaps do not count, mm
};

/// By any of the proofs, cheapest first.
[[nodiscard]] bool proved_clear(const Pair& pair);

}  // namespace spotblue::proof
