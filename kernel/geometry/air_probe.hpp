#pragma once
/// @file
/// Whether a point of a part's surroundings is surely air, by rays from it.

#include <span>

#include "geometry/face_bounds.hpp"

namespace spotblue::proof {

/// True when one of the rays leaves the part without meeting any face's bound, or first meets the
/// front of a plane face well inside its outline. The point must not lie on a face.
[[nodiscard]] bool in_air(const FaceBounds& part, Point start, std::span<const Direction> rays);

}  // namespace spotblue::proof
