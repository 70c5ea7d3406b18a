#pragma once
/// @file
/// Whether a point is in a part's material or in air, by rays from it to the part's faces.

#include <span>

#include "geometry/faces/face_bounds.hpp"

namespace spotblue::proof {

/// True when one of the rays leaves the part without meeting any face's bound, or first meets the
/// front of a plane face well inside its outline. The point must not lie on a face.
[[nodiscard]] bool in_air(const FaceBounds& part, Point start, std::span<const Direction> rays);

enum class Medium { air, metal, unknown };

/// Whether the straight way between two points may meet the face, by what its patch or outline
/// covers. Coming from air a way meets only fronts, from metal only backs: what an outline covers
/// beyond its face, as at a cross hole's edge, is told by that. Unknown: whichever side.
[[nodiscard]] bool may_meet(const Turned& turned, Point from, Point to, Medium coming_from);
[[nodiscard]] bool may_meet(const Flat& flat, Point from, Point to, Medium coming_from);

/// What is at a point, by the first face that each of some rays meets, cylinders and cones by what
/// their patches cover, good to a few degrees beside a cross hole; so rays are asked until two more
/// say the one than the other. Unknown where none can be told, as inside a free-form face's box.
[[nodiscard]] Medium medium_at(const FaceBounds& part, Point start);

}  // namespace spotblue::proof
