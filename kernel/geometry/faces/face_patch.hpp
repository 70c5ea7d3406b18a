#pragma once
// What a face covers of the surface of revolution it lies on: a stretch of the axis and the angles.

#include <span>
#include <vector>

#include "geometry/surfaces/edge_curve.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// The angles the face covers, stretch by stretch along the axis: a new patch wherever they change,
// as at the end of a keyseat. Where they change all the way, as round a cross hole, short stretches
// stand for it, each with the angles at its middle.
[[nodiscard]] std::vector<Patch> face_patches(std::span<const EdgeCurve> edges, const Line& axis,
                                              Direction zero, Side side);

// The angles round a torus's centre circle: which part of its tube a fillet is.
[[nodiscard]] std::vector<Arc> tube_arcs(std::span<const EdgeCurve> edges, const Line& axis,
                                         double centre_radius);

}  // namespace spotblue
