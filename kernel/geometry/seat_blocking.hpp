#pragma once
// What of a possible seat is left once the material of third parts lies between its two surfaces.

#include <span>

#include "geometry/seat_candidates.hpp"

namespace spotblue {

// A third part near both, placed in the frame of the pair's first product.
struct Neighbour {
  const Product* product = nullptr;
  Frame frame;
};

struct OpenRadial {
  Stretches stretches;    // with no material between over at least a part of the seat's angles
  std::vector<Arc> arcs;  // open angles over all those stretches
};
[[nodiscard]] OpenRadial open_part(const RadialCandidate& candidate,
                                   std::span<const Neighbour> neighbours,
                                   const SeatSettings& settings);

// The shared region less what lies between, in the first plane's coordinates.
[[nodiscard]] Region open_part(const PlaneCandidate& candidate, const Plane& first_plane,
                               std::span<const Neighbour> neighbours, const SeatSettings& settings);

}  // namespace spotblue
