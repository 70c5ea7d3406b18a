#pragma once
// Volume of a solid from its faces' boundaries (divergence theorem), so that no curve in surface
// parameters and no repaired shape is needed for plain machined parts.

#include <optional>
#include <span>

#include "geometry/surfaces/edge_curve.hpp"
#include "geometry/surfaces/face_surface.hpp"
#include "geometry/surfaces/flux.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Area that edges in a plane enclose, counter-clockwise seen against the normal; of edges that do
// not close with the chords to `from`, a point of the plane.
[[nodiscard]] Flux plane_area(std::span<const EdgeCurve> edges, Point from, Direction normal);

// Three times the face's share of the volume: the integral of (p - origin) . n over the face, n out
// of the material. Nothing for a surface of another kind, and for boundaries that round_flux.hpp
// names.
[[nodiscard]] std::optional<Flux> face_flux(const FaceSurface& surface,
                                            std::span<const EdgeCurve> edges, Point origin);

}  // namespace spotblue
