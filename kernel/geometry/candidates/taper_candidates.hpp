#pragma once
// A tapered bore against a taper.

#include <optional>

#include "geometry/candidates/seat_candidates.hpp"

namespace spotblue {

[[nodiscard]] std::optional<TaperCandidate> taper_candidate(const Cone& hole,
                                                            const Frame& hole_frame,
                                                            const Cone& shaft,
                                                            const Frame& shaft_frame,
                                                            const SeatSettings& settings);

}  // namespace spotblue
