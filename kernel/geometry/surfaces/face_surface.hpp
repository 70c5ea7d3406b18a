#pragma once
// What surface a face lies on, whatever it was written as: plane, cylinder, cone, or another.

#include <TopoDS_Face.hxx>

#include "geometry/model/tolerances.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

struct FaceSurface {
  enum class Kind { plane, cylinder, cone, torus, sphere, other };
  Kind kind = Kind::other;
  SurfaceSource source = SurfaceSource::plane;
  Line axis;  // cylinder, cone (radius grows along it), torus; sphere: through its centre;
              // plane: a point and the normal out of the material
  double radius = 0.0;         // cylinder; cone at axis.at; sphere; torus: of the centre circle
  double minor_radius = 0.0;   // torus
  double half_angle = 0.0;     // cone, rad, > 0
  Side side = Side::external;  // where the material is, for all but planes
  double deviation = 0.0;      // mm: how far a surface written as something else lies off this one
};

// A surface written as something else is a plane, cylinder or cone when it lies within `within` mm
// of one; a cylinder also within 1e-4 mm where its radius is well told.
[[nodiscard]] FaceSurface face_surface(const TopoDS_Face& face, double within = kOnePlace);

// How far a point lies off the surface, mm; 0 for another kind.
[[nodiscard]] double off_surface(const FaceSurface& surface, Point p);

}  // namespace spotblue
