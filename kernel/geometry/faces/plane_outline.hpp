#pragma once
// The outline of a plane face in the plane's own coordinates.

#include <span>

#include "geometry/surfaces/edge_curve.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Adds the face's edges to plane.outline; plane.at, normal and u are set already.
void add_outline(Plane& plane, std::span<const EdgeCurve> edges);

// Drops pairs of edges that run back on each other: seams between faces merged into one feature.
void drop_seams(Region& outline);

}  // namespace spotblue
