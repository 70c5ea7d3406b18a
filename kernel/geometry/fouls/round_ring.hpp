#pragma once
/// @file
/// A part that is one whole torus, as an O-ring is, against walls round its axis: in closed form,
/// since Open CASCADE's boolean may lose what it shares with them.

#include <optional>
#include <vector>

#include "geometry/fouls/seat_foul.hpp"
#include "geometry/outline/clear_pair.hpp"

namespace spotblue::proof {

/// What either part, being one whole torus, shares with the other's cylinders about its axis, one a
/// cylinder; nothing when neither is one, or any other face of the other comes near it. In the
/// first part's frame.
[[nodiscard]] std::optional<std::vector<ToldFoul>> round_ring_fouls(const Pair& pair);

/// mm3 of a torus beyond a cylinder about its axis, of that radius: of `major` and `minor` radius,
/// what is farther out than `wall`, or for a negative `side` farther in. Pappus: area of the
/// circle's segment times the way of its centroid.
[[nodiscard]] double torus_beyond(double major, double minor, double wall, double side);

}  // namespace spotblue::proof
