#pragma once
// What a part has in the gap between two faces that look at each other.

#include "geometry/candidates/near_part.hpp"
#include "geometry/candidates/seat_candidates.hpp"

namespace spotblue {

// Which part it is: beside their own faces the two that look at each other have air.
enum class Whose { first, second, other };

// What of `open` (in the coordinates of the first face) is left without what the part has in the
// gap above it: exactly where its faces there are parallel to the first or turned about a line
// square to it, else by cells of a twenty-fourth of the extent.
[[nodiscard]] Region without_part(Region open, const Plane& first, double gap, const NearPart& part,
                                  Whose whose, const SeatSettings& settings);

// Whether the part is metal all the way from the first face down to `gap` (negative) in most of
// what can be told of the shared region.
[[nodiscard]] bool is_metal_between(const PlaneCandidate& candidate, const Plane& first,
                                    const NearPart& part);

}  // namespace spotblue
