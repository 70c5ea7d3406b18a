#pragma once
// Planes, cylinders and cones recognised in surfaces that were written as something else, by
// fitting points and normals; exact conversions come back to 1e-11 mm.

#include <BRepAdaptor_Surface.hxx>
#include <optional>
#include <vector>

#include "spotblue/geometry/vector.hpp"

namespace spotblue {

struct SurfaceSample {
  Point at;
  Direction normal;  // dU x dV, the surface's own sense
};

// A grid over the surface's own parameters (a piece of one without end), places without a normal
// left out; empty when too
// few remain or all lie on a line.
[[nodiscard]] std::vector<SurfaceSample> sample_surface(const BRepAdaptor_Surface& surface);

struct FittedCone {
  Line axis;  // radius grows along it
  double radius = 0.0;
  double half_angle = 0.0;
};
struct FittedCylinder {
  Line axis;
  double radius = 0.0;
};

[[nodiscard]] std::optional<Line> fit_plane(const std::vector<SurfaceSample>& samples);
[[nodiscard]] std::optional<FittedCylinder> fit_cylinder(const std::vector<SurfaceSample>& samples);
[[nodiscard]] std::optional<FittedCone> fit_cone(const std::vector<SurfaceSample>& samples);

}  // namespace spotblue
