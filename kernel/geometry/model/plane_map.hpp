#pragma once
// The outline of one plane face seen in the coordinates of another that is parallel to it.

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// `source`, placed by `frame`, projected along target's normal onto target's (u, v).
[[nodiscard]] Region outline_in(const Plane& target, const Plane& source, const Frame& frame);

// The point of target's own (u, v) coordinates below `p`.
[[nodiscard]] Point2 in_plane(const Plane& plane, Point p);
[[nodiscard]] Point on_plane(const Plane& plane, Point2 p);

}  // namespace spotblue
