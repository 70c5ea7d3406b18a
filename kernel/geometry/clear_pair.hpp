#pragma once
/// @file
/// Proofs that two placed parts share no material beyond what their seats account for. Each may
/// fail to prove what is so; none ever proves what is not.

#include "accounted.hpp"
#include "face_bounds.hpp"

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

/// Oriented boxes apart along one of their 15 directions.
[[nodiscard]] bool boxes_apart(const Pair& pair);
/// A plane square to a normal of either's plane faces with one part on each side.
[[nodiscard]] bool planes_apart(const Pair& pair);
/// What they occupy about some line they may share does not overlap.
[[nodiscard]] bool profiles_apart(const Pair& pair);
/// No face of one enters a convex hull of the other, and the hull is not inside.
[[nodiscard]] bool hull_apart(const Pair& pair);

}  // namespace spotblue::proof
