#include "geometry/surfaces/plain_faces.hpp"

#include <BRepAdaptor_Surface.hxx>
#include <BRepTools.hxx>
#include <BRepTools_ReShape.hxx>
#include <BRep_Builder.hxx>
#include <BRep_Tool.hxx>
#include <Geom_ConicalSurface.hxx>
#include <Geom_CylindricalSurface.hxx>
#include <Geom_Plane.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Iterator.hxx>
#include <TopoDS_Vertex.hxx>
#include <algorithm>
#include <array>
#include <cmath>
#include <gp_Ax3.hxx>
#include <optional>

#include "geometry/model/tolerances.hpp"
#include "geometry/occt/occt_values.hpp"
#include "geometry/surfaces/face_surface.hpp"

namespace spotblue {
namespace {

// Where the plain surface's parameters begin: at the face's seam, where it has one.
Direction begin_of(const TopoDS_Face& face, const Line& axis) {
  for (TopExp_Explorer it(face, TopAbs_EDGE); it.More(); it.Next()) {
    const TopoDS_Edge& edge = TopoDS::Edge(it.Current());
    if (!BRep_Tool::IsClosed(edge, face) || BRep_Tool::Degenerated(edge)) {
      continue;
    }
    double first = 0.0;
    double last = 0.0;
    const Handle(Geom_Curve) curve = BRep_Tool::Curve(edge, first, last);
    if (!curve.IsNull()) {
      const Point p = from_occt(curve->Value(0.5 * (first + last)));
      const Point away = p - at_station(axis, station(axis, p));
      if (norm(away) > kNoLength) {
        return unit(away);
      }
    }
  }
  return any_square(axis.along);
}

// Of a plane, cylinder or cone.
Handle(Geom_Surface) plain_surface(const TopoDS_Face& face, const FaceSurface& known) {
  const gp_Ax3 axes(to_pnt(known.axis.at), to_dir(known.axis.along),
                    to_dir(begin_of(face, known.axis)));
  switch (known.kind) {
    case FaceSurface::Kind::plane:
      return new Geom_Plane(axes);
    case FaceSurface::Kind::cylinder:
      return new Geom_CylindricalSurface(axes, known.radius);
    default:
      return new Geom_ConicalSurface(axes, known.half_angle, known.radius);
  }
}

// Out of the plain surface at a point of it, as its own parameters have it.
Direction natural_normal(const FaceSurface& known, Point p) {
  if (known.kind == FaceSurface::Kind::plane) {
    return known.axis.along;
  }
  const Direction out = unit(p - at_station(known.axis, station(known.axis, p)));
  const double lean = known.kind == FaceSurface::Kind::cone ? known.half_angle : 0.0;
  return Direction(std::cos(lean) * out - std::sin(lean) * known.axis.along);
}

bool is_plain(GeomAbs_SurfaceType type) {
  return type == GeomAbs_Plane || type == GeomAbs_Cylinder || type == GeomAbs_Cone ||
         type == GeomAbs_Sphere || type == GeomAbs_Torus;
}

// A cone's tip is an edge of no length, which other parameters do not have where these have it.
bool has_tip(const TopoDS_Face& face) {
  for (TopExp_Explorer it(face, TopAbs_EDGE); it.More(); it.Next()) {
    if (BRep_Tool::Degenerated(TopoDS::Edge(it.Current()))) {
      return true;
    }
  }
  return false;
}

// The face, as if it were forward, on its plain surface; nothing where it stays.
std::optional<TopoDS_Face> plain_face(const TopoDS_Face& face) {
  const BRepAdaptor_Surface written(face);
  if (is_plain(written.GetType()) || has_tip(face)) {
    return {};
  }
  constexpr double kWithin = 1e-6;
  const FaceSurface known = face_surface(face, kWithin);
  const bool has_kind = known.kind == FaceSurface::Kind::plane ||
                        known.kind == FaceSurface::Kind::cylinder ||
                        known.kind == FaceSurface::Kind::cone;
  if (!has_kind || known.deviation > kWithin) {
    return {};
  }
  double u0 = 0.0, u1 = 0.0, v0 = 0.0, v1 = 0.0;
  BRepTools::UVBounds(face, u0, u1, v0, v1);
  gp_Pnt p;
  gp_Vec du, dv;
  written.D1(0.5 * (u0 + u1), 0.5 * (v0 + v1), p, du, dv);
  const gp_Vec normal = du.Crossed(dv);
  if (normal.Magnitude() < kRounding) {
    return {};
  }
  const double same = dot(from_occt(normal), natural_normal(known, from_occt(p)));
  const BRep_Builder builder;
  TopoDS_Face plain;
  builder.MakeFace(plain, plain_surface(face, known), BRep_Tool::Tolerance(face));
  for (TopoDS_Iterator it(face); it.More(); it.Next()) {
    builder.Add(plain, same > 0.0 ? it.Value() : it.Value().Reversed());
  }
  plain.Orientation(same > 0.0 ? TopAbs_FORWARD : TopAbs_REVERSED);
  return plain;
}

}  // namespace

TopoDS_Shape with_plain_faces(const TopoDS_Shape& shape) {
  const Handle(BRepTools_ReShape) change = new BRepTools_ReShape();
  bool changed = false;
  for (TopExp_Explorer it(shape, TopAbs_FACE); it.More(); it.Next()) {
    const TopoDS_Face face = TopoDS::Face(it.Current().Oriented(TopAbs_FORWARD));
    if (face.Location().IsIdentity()) {
      if (const std::optional<TopoDS_Face> plain = plain_face(face)) {
        change->Replace(face, *plain);
        changed = true;
      }
    }
  }
  return changed ? change->Apply(shape) : shape;
}

bool has_plain_faces(const TopoDS_Shape& shape) {
  for (TopExp_Explorer it(shape, TopAbs_FACE); it.More(); it.Next()) {
    if (!is_plain(BRepAdaptor_Surface(TopoDS::Face(it.Current())).GetType())) {
      return false;
    }
  }
  return true;
}

}  // namespace spotblue
