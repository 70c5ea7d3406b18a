#include "geometry/surfaces/face_surface.hpp"

#include <Adaptor3d_Curve.hxx>
#include <BRepAdaptor_Surface.hxx>
#include <BRep_Tool.hxx>
#include <cmath>
#include <gp_Ax1.hxx>
#include <gp_Circ.hxx>
#include <gp_Cone.hxx>
#include <gp_Cylinder.hxx>
#include <gp_Pln.hxx>
#include <gp_Sphere.hxx>
#include <gp_Torus.hxx>
#include <optional>

#include "geometry/occt/occt_values.hpp"
#include "geometry/surfaces/surface_fit.hpp"

namespace spotblue {
namespace {

// A spline no farther than this off a cylinder is one: no gauge tells the two apart.
constexpr double kNearCylinder = 1e-4;  // mm

// A left-handed placement turns the surface's normal over (kernel-notes, section 2).
bool outward_is_material_free(const TopoDS_Face& face, const gp_Ax3& position) {
  return (face.Orientation() != TopAbs_REVERSED) == static_cast<bool>(position.Direct());
}

Side side_of(const TopoDS_Face& face, const gp_Ax3& position) {
  return outward_is_material_free(face, position) ? Side::external : Side::internal;
}

FaceSurface from_plane(const TopoDS_Face& face, const gp_Pln& plane) {
  FaceSurface result;
  result.kind = FaceSurface::Kind::plane;
  const Direction normal = from_occt(plane.Axis().Direction());
  result.axis = {from_occt(plane.Location()),
                 outward_is_material_free(face, plane.Position()) ? normal : -normal};
  return result;
}

FaceSurface from_cone(const TopoDS_Face& face, const gp_Cone& cone) {
  FaceSurface result;
  result.kind = FaceSurface::Kind::cone;
  result.source = SurfaceSource::cone;
  const Direction along = from_occt(cone.Axis().Direction());
  result.axis = {from_occt(cone.Location()), cone.SemiAngle() > 0.0 ? along : -along};
  result.radius = cone.RefRadius();
  result.half_angle = std::abs(cone.SemiAngle());
  result.side = side_of(face, cone.Position());
  return result;
}

// The outward side of a recognised surface of revolution, from the normal at one of its points.
Side side_at(const TopoDS_Face& face, const SurfaceSample& sample, const Line& axis) {
  const Point radial = sample.at - at_station(axis, station(axis, sample.at));
  const bool outward = dot(sample.normal, radial) > 0.0;
  return outward == (face.Orientation() != TopAbs_REVERSED) ? Side::external : Side::internal;
}

std::optional<FaceSurface> from_fit(const TopoDS_Face& face, const BRepAdaptor_Surface& surface,
                                    SurfaceSource source, double within) {
  const std::vector<SurfaceSample> samples = sample_surface(surface);
  if (samples.empty()) {
    return std::nullopt;
  }
  FaceSurface result;
  result.source = source;
  if (const auto plane = fit_plane(samples, within)) {
    result.kind = FaceSurface::Kind::plane;
    result.axis = plane->line;
    result.deviation = plane->deviation;
    if ((dot(plane->line.along, samples.front().normal) > 0.0) !=
        (face.Orientation() != TopAbs_REVERSED)) {
      result.axis.along = -result.axis.along;
    }
    return result;
  }
  const auto cone = fit_cone(samples, within);
  auto cylinder = fit_cylinder(samples, within);
  if (!cylinder && !cone) {
    cylinder = fit_near_cylinder(surface, samples, kNearCylinder);
  }
  if (cylinder) {
    result.kind = FaceSurface::Kind::cylinder;
    result.axis = cylinder->axis;
    result.radius = cylinder->radius;
    result.deviation = cylinder->deviation;
    result.side = side_at(face, samples.front(), result.axis);
    return result;
  }
  if (cone) {
    result.kind = FaceSurface::Kind::cone;
    result.axis = cone->axis;
    result.radius = cone->radius;
    result.half_angle = cone->half_angle;
    result.deviation = cone->deviation;
    result.side = side_at(face, samples.front(), result.axis);
    return result;
  }
  return std::nullopt;
}

// The outward side of a tube from the normal at one of its points.
Side tube_side(const TopoDS_Face& face, const BRepAdaptor_Surface& surface,
               const FaceSurface& torus) {
  gp_Pnt at;
  gp_Vec du;
  gp_Vec dv;
  surface.D1(surface.FirstUParameter(), surface.FirstVParameter(), at, du, dv);
  const Point p = from_occt(at);
  const Point out = p - at_station(torus.axis, station(torus.axis, p));
  const Point centre = torus.axis.at + (torus.radius / norm(out)) * out;
  const bool outward = dot(cross(from_occt(du), from_occt(dv)), p - centre) > 0.0;
  return outward == (face.Orientation() != TopAbs_REVERSED) ? Side::external : Side::internal;
}

// A fillet that was turned about an axis instead of written as a torus.
std::optional<FaceSurface> from_turned_circle(const TopoDS_Face& face,
                                              const BRepAdaptor_Surface& surface) {
  const auto curve = surface.BasisCurve();
  if (curve->GetType() != GeomAbs_Circle) {
    return std::nullopt;
  }
  const gp_Circ circle = curve->Circle();
  const gp_Ax1 turned_about = surface.AxeOfRevolution();
  const Line axis{from_occt(turned_about.Location()), from_occt(turned_about.Direction())};
  const Point centre = from_occt(circle.Location());
  const Direction normal = from_occt(circle.Axis().Direction());
  // Both hold to the file's own digits or not at all: a circle askew sweeps another surface.
  constexpr double in_plane = 1e-9;
  if (std::abs(dot(normal, axis.along)) > in_plane ||
      std::abs(dot(centre - axis.at, normal)) > in_plane * (1.0 + circle.Radius())) {
    return std::nullopt;
  }
  FaceSurface result;
  result.kind = FaceSurface::Kind::torus;
  result.source = SurfaceSource::revolution;
  result.axis = {at_station(axis, station(axis, centre)), axis.along};
  result.radius = distance(axis, centre);
  result.minor_radius = circle.Radius();
  result.side = tube_side(face, surface, result);
  return result;
}

FaceSurface from_revolution(const TopoDS_Face& face, const BRepAdaptor_Surface& surface,
                            double within) {
  if (const auto fitted = from_fit(face, surface, SurfaceSource::revolution, within)) {
    return *fitted;
  }
  return from_turned_circle(face, surface).value_or(FaceSurface{});
}

}  // namespace

FaceSurface face_surface(const TopoDS_Face& face, double within) {
  FaceSurface result;
  if (BRep_Tool::Surface(face).IsNull()) {
    return result;
  }
  const BRepAdaptor_Surface surface(face, Standard_False);
  switch (surface.GetType()) {
    case GeomAbs_Plane:
      return from_plane(face, surface.Plane());
    case GeomAbs_Cylinder: {
      const gp_Cylinder cylinder = surface.Cylinder();
      result.kind = FaceSurface::Kind::cylinder;
      result.source = SurfaceSource::cylinder;
      result.axis = {from_occt(cylinder.Location()), from_occt(cylinder.Axis().Direction())};
      result.radius = cylinder.Radius();
      result.side = side_of(face, cylinder.Position());
      return result;
    }
    case GeomAbs_Cone:
      return from_cone(face, surface.Cone());
    case GeomAbs_Torus: {
      const gp_Torus torus = surface.Torus();
      result.kind = FaceSurface::Kind::torus;
      result.axis = {from_occt(torus.Location()), from_occt(torus.Axis().Direction())};
      result.radius = torus.MajorRadius();
      result.minor_radius = torus.MinorRadius();
      result.side = side_of(face, torus.Position());
      return result;
    }
    case GeomAbs_Sphere: {
      const gp_Sphere sphere = surface.Sphere();
      result.kind = FaceSurface::Kind::sphere;
      result.axis = {from_occt(sphere.Location()), from_occt(sphere.Position().Axis().Direction())};
      result.radius = sphere.Radius();
      result.side = side_of(face, sphere.Position());
      return result;
    }
    case GeomAbs_SurfaceOfRevolution:
      return from_revolution(face, surface, within);
    case GeomAbs_SurfaceOfExtrusion:
      return from_fit(face, surface, SurfaceSource::extrusion, within).value_or(result);
    default:
      return from_fit(face, surface, SurfaceSource::bspline, within).value_or(result);
  }
}

double off_surface(const FaceSurface& surface, Point p) {
  const Line& axis = surface.axis;
  const double r = distance(axis, p);
  const double z = station(axis, p);
  switch (surface.kind) {
    case FaceSurface::Kind::plane:
      return std::abs(z);
    case FaceSurface::Kind::cylinder:
      return std::abs(r - surface.radius);
    case FaceSurface::Kind::cone:
      return std::abs((r - surface.radius) * std::cos(surface.half_angle) -
                      z * std::sin(surface.half_angle));
    case FaceSurface::Kind::sphere:
      return std::abs(norm(p - axis.at) - surface.radius);
    case FaceSurface::Kind::torus:
      return std::abs(std::hypot(r - surface.radius, z) - surface.minor_radius);
    case FaceSurface::Kind::other:
      break;
  }
  return 0.0;
}

}  // namespace spotblue
