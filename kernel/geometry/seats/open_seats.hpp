#pragma once
// What of a pair's candidates is left once what lies between has been taken off.

#include <optional>
#include <utility>
#include <vector>

#include "geometry/candidates/seat_blocking.hpp"
#include "geometry/candidates/seat_candidates.hpp"

namespace spotblue {

// What is left of one kind of pair among one kind of neighbourhood, in the first product's frame.
struct OpenRadialSeat {
  const RadialCandidate* candidate;
  OpenRadial open;
};
struct OpenAxialSeat {
  const PlaneCandidate* candidate;
  double area;
  std::optional<Reach> reach;  // from the axis, where there is one
};
struct OpenSeats {
  std::vector<OpenRadialSeat> radial;
  std::vector<OpenAxialSeat> axial;
  std::vector<const TaperCandidate*> tapers;
  std::vector<std::pair<const WidthCandidate*, double>> widths;  // with the smaller open area
};

// Points into the candidates. What is no more than a sliver is left out, and reliefs are.
[[nodiscard]] OpenSeats open_seats(const PairCandidates& candidates, const Surroundings& around,
                                   const SeatSettings& settings);

}  // namespace spotblue
