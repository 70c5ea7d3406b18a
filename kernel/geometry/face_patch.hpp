#pragma once
// What a face covers of the surface of revolution it lies on: a stretch of the axis and the angles.

#include <span>

#include "geometry/edge_curve.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// The face's boundary projected on the axis and on the angles about it. The boundary is enough:
// along a generator the face is bounded, so each angle it covers is met by an edge.
[[nodiscard]] Patch face_patch(std::span<const EdgeCurve> edges, const Line& axis, Direction zero);

// The same for the angles round a torus's centre circle: which part of its tube a fillet is.
[[nodiscard]] std::vector<Arc> tube_arcs(std::span<const EdgeCurve> edges, const Line& axis,
                                         double centre_radius);

}  // namespace spotblue
