#pragma once
// Floors of grooves: what the lands beside them keep from bearing.

#include <vector>

#include "geometry/candidates/seat_candidates.hpp"

namespace spotblue {

// A cylinder in a cylinder, as far as nothing lies between them.
struct OpenStretches {
  const RadialCandidate* candidate;
  const Stretches* stretches;  // on the candidate's axis
};

// Of each whether it is relief: other cylinders of the same part on the same axis stand nearer to
// the same mate's cylinder on both sides of it. A floor beside a land on one side only may bear.
[[nodiscard]] std::vector<bool> reliefs(const std::vector<OpenStretches>& seats,
                                        const Product& first, const Product& second,
                                        const SeatSettings& settings);

}  // namespace spotblue
