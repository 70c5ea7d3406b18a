#pragma once
// Components that stand so far away that a number of their place must be wrong.

#include <vector>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// More than 1e9 mm from the origin: there a double is good to 1e-7 mm.
inline constexpr double kFarthest = 1e9;
// From the others, in sizes of the largest part.
inline constexpr double kFarthestInSizes = 1e6;

// Takes them out of the model; a note for each says how far it stands, and how large that is beside
// the largest part. Numbers that are not finite are out already. Both bounds are choices of this
// program, no source.
[[nodiscard]] std::vector<Note> without_far_places(Model& model);

}  // namespace spotblue
