#pragma once
// How deep two surfaces of a seat may lie in one another.

#include "spotblue/geometry/settings.hpp"

namespace spotblue {

// How much deeper than a seat may a hole and a shaft lie in one another where their radial gap is
// least; 0 where they do not. Clearance by diameter and yet an overlap is all of it too much.
[[nodiscard]] double overlap_past_seat(const SeatSettings& settings, double diameter,
                                       double clearance, double least_gap);

}  // namespace spotblue
