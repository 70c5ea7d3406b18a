#pragma once
// Rings one in another as numbers: how far pressing and warming move one surface of theirs.

#include <optional>
#include <span>
#include <vector>

#include "group/rings/ring_wall.hpp"

namespace spotblue {

/// What lies between one ring and the next outward.
struct RingJoint {
  double diameter_mm = 0.0;
  Interval interference_mm;  ///< diametral, roughness taken off; negative is clearance
  bool in_place = false;     ///< pressed already: the sizes were taken as they are
};

/// From the innermost out; one joint fewer than rings.
struct RingStack {
  std::vector<RingWall> rings;
  std::vector<RingJoint> joints;
  std::vector<double> running_c;  ///< by ring
  double bench_c = 20.0;
};

/// How far a diameter moves from its free size at the bench, mm.
struct Moved {
  Interval assembled, running;
};

enum class RingSurface { bore, outside };

/// All that may be, at every corner of interference and wall. A ring that is cut through moves with
/// nothing, and is not moved but by its own warmth.
/// @param ring  number of the ring whose surface is asked for; `diameter` its free size.
[[nodiscard]] Moved moved(const RingStack& stack, std::size_t ring, RingSurface surface,
                          double diameter_mm);

}  // namespace spotblue
