#pragma once
// Volume of a solid from its faces' boundaries (divergence theorem), so that no curve in surface
// parameters and no repaired shape is needed for plain machined parts.

#include <optional>
#include <span>

#include "geometry/edge_curve.hpp"
#include "geometry/face_surface.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Three times the face's share of the volume: the integral of (p - origin) . n over the face, n out
// of the material. Nothing for surfaces other than planes, cylinders and cones.
[[nodiscard]] std::optional<double> face_flux(const FaceSurface& surface,
                                              std::span<const EdgeCurve> edges, Point origin);

}  // namespace spotblue
