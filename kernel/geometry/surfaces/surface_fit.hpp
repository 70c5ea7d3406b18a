#pragma once
// Planes, cylinders and cones recognised in surfaces that were written as something else, by
// fitting points and normals; exact conversions come back to 1e-11 mm.

#include <BRepAdaptor_Surface.hxx>
#include <optional>
#include <vector>

#include "spotblue/base/interval.hpp"
#include "spotblue/geometry/vector.hpp"

namespace spotblue {

struct SurfaceSample {
  Point at;
  Direction normal;  // dU x dV, the surface's own sense
};

[[nodiscard]] Interval finite_stretch(double from, double to);

// A grid over the surface's own parameters (a piece of one without end), places without a normal
// left out; empty when too few remain or all lie on a line.
[[nodiscard]] std::vector<SurfaceSample> sample_surface(const BRepAdaptor_Surface& surface);

// Each with how far the samples lie off it at most, mm.
struct FittedPlane {
  Line line;  // a point and the normal
  double deviation = 0.0;
};
struct FittedCone {
  Line axis;  // radius grows along it
  double radius = 0.0;
  double half_angle = 0.0;
  double deviation = 0.0;
};
struct FittedCylinder {
  Line axis;
  double radius = 0.0;
  double deviation = 0.0;
};

// Nothing where a sample lies farther off than `within`, mm.
[[nodiscard]] std::optional<FittedPlane> fit_plane(const std::vector<SurfaceSample>& samples,
                                                   double within);
[[nodiscard]] std::optional<FittedCylinder> fit_cylinder(const std::vector<SurfaceSample>& samples,
                                                         double within);
[[nodiscard]] std::optional<FittedCone> fit_cone(const std::vector<SurfaceSample>& samples,
                                                 double within);

// A cylinder by least squares that is a near one's best, whatever the samples lie off it.
[[nodiscard]] std::optional<FittedCylinder> fit_rough_cylinder(
    const std::vector<SurfaceSample>& samples);

// A cylinder by least squares that a finer grid of the surface lies within `within` of; only where
// the surface turns and reaches far enough that its radius and its straightness are well told.
[[nodiscard]] std::optional<FittedCylinder> fit_near_cylinder(
    const BRepAdaptor_Surface& surface, const std::vector<SurfaceSample>& samples, double within);

}  // namespace spotblue
