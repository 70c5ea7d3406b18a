#pragma once
// What of a possible seat is left once the material that lies between its two surfaces is taken
// off: of third parts and of the two themselves. Where they overlap: what is left where both have
// metal that thick.

#include <span>

#include "geometry/candidates/near_part.hpp"
#include "geometry/candidates/seat_candidates.hpp"

namespace spotblue {

// The parts round a pair: its first and second, and the others near both.
struct Surroundings {
  NearPart first, second;
  std::span<const NearPart> others;
};

struct OpenRadial {
  std::vector<Patch> pieces;  // what is left, stretch by stretch
  Stretches stretches;        // with no material between over at least a part of the seat's angles
  std::vector<Arc> arcs;      // open angles over all those stretches
};
[[nodiscard]] OpenRadial open_part(const RadialCandidate& candidate, const Surroundings& around,
                                   const SeatSettings& settings);

// The shared region less what lies between, in the first plane's coordinates; where the faces have
// sunk into one another, less the metal that press fits of the same two account for: `radial`.
[[nodiscard]] Region open_part(const PlaneCandidate& candidate,
                               std::span<const RadialCandidate> radial, const Surroundings& around,
                               const SeatSettings& settings);

// Whether two cones see each other.
[[nodiscard]] bool is_open(const TaperCandidate& candidate, const Surroundings& around,
                           const SeatSettings& settings);

}  // namespace spotblue
