#pragma once
// What metal of a ring beyond the ends of its joint does to it.

#include "group/rings/ring_wall.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue {

/// How many times as stiff as the length that is pressed alone the ring is in its middle, at least
/// and at most; 1 without metal beyond, or with less than an eighth of the joint's length. At most:
/// as one ring with that metal, no farther than 1/beta from either end. At least: where the wave
/// that the ends make swings back.
///
/// Source: a long tube pressed over 2 a gives 1 - exp(-beta a) cos(beta a) of what it does pressed
/// all along, beta^4 = 3 (1 - nu^2)/(r t)^2 (Timoshenko, Strength of Materials, part II, 3rd ed.
/// 1956, from memory). Thick rings are taken as tubes of their mean radius: choice of this program.
/// A solid part is taken as by itself: it gives little, and its length changes little of that.
/// @param ring   of the part there, over its whole wall.
/// @param joint  one that it is pressed in or on.
[[nodiscard]] Interval stiffness_beyond(const Model& model, OccurrenceId part,
                                        const RadialSeat& joint, const Ring& ring);

}  // namespace spotblue
