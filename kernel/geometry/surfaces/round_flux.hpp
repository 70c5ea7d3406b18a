#pragma once
// Flux through faces of spheres and tori in closed form, from their boundary alone: a closed one
// has none, and curves in its parameters need not be right.

#include <optional>
#include <span>

#include "geometry/surfaces/edge_curve.hpp"
#include "geometry/surfaces/face_surface.hpp"
#include "geometry/surfaces/flux.hpp"

namespace spotblue {

// As face_flux. Nothing where the boundary does not close or runs askew round both of a torus's
// circles.
[[nodiscard]] std::optional<Flux> sphere_flux(const FaceSurface& surface,
                                              std::span<const EdgeCurve> edges, Point origin);
[[nodiscard]] std::optional<Flux> torus_flux(const FaceSurface& surface,
                                             std::span<const EdgeCurve> edges, Point origin);

}  // namespace spotblue
