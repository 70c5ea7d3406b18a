#pragma once
// A ring of a stack with what is cut into it: the weakest plain ring that it may be, and the
// strongest.

#include <optional>

#include "spotblue/base/interval.hpp"
#include "spotblue/mechanics/thick_ring.hpp"

namespace spotblue {

/// One ring over one stretch of a stack.
struct RingWall {
  std::optional<double> joint_inside;   ///< diameter at which it is pressed on something
  std::optional<double> joint_outside;  ///< at which it is pressed into something
  Interval begins, ends;                ///< as in WallStretch, mm
  Elastic material;
  Interval stiffness{1.0, 1.0};  ///< times, by metal beyond the joint's ends
};

enum class WallBound { weakest, strongest };

/// The plain ring to reckon with. Where the metal that is left is thinner than the ring between its
/// two joints, that ring is taken of a material weaker by as much.
/// @return nothing where the wall is cut through.
[[nodiscard]] std::optional<Ring> plain_ring(const RingWall& wall, WallBound bound);

}  // namespace spotblue
