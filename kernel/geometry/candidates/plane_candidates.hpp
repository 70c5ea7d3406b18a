#pragma once
// Plane faces of two products that look at each other, and slots with keys in them.

#include <vector>

#include "geometry/candidates/seat_candidates.hpp"

namespace spotblue {

// Every pair of faces within the gap limits whose outlines share area; `axis` is set where one of
// the common axes is square to both.
[[nodiscard]] std::vector<PlaneCandidate> plane_candidates(const Product& first,
                                                           const Product& second,
                                                           const Frame& second_in_first,
                                                           const std::vector<CommonAxis>& axes,
                                                           const SeatSettings& settings);

// Slots of one product with keys of the other between their faces. The pairs of faces that make
// them are taken out of `planes`: they are told as a width, not as two gaps. Faces square to a
// common axis stay: those are end faces of a turned group, but for half moon keys.
[[nodiscard]] std::vector<WidthCandidate> take_widths(const Product& first, const Product& second,
                                                      const Frame& second_in_first,
                                                      std::vector<PlaneCandidate>& planes);

}  // namespace spotblue
