#include "geometry/product_features.hpp"

#include <BRepAdaptor_Surface.hxx>
#include <BRepGProp_Domain.hxx>
#include <BRepGProp_Face.hxx>
#include <BRepGProp_Vinert.hxx>
#include <BRep_Tool.hxx>
#include <Geom_BSplineSurface.hxx>
#include <ShapeFix_Shape.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>

#include "geometry/edge_curve.hpp"
#include "geometry/face_flux.hpp"
#include "geometry/feature_merge.hpp"
#include "geometry/feature_names.hpp"
#include "geometry/occt_values.hpp"
#include "geometry/width_features.hpp"

namespace spotblue {
namespace {

std::vector<EdgeCurve> edges_of(const TopoDS_Face& face) {
  std::vector<EdgeCurve> edges;
  for (TopExp_Explorer it(face, TopAbs_EDGE); it.More(); it.Next()) {
    if (auto edge = edge_curve(TopoDS::Edge(it.Current()))) {
      edges.push_back(std::move(*edge));
    }
  }
  return edges;
}

// A free-form face lies in the hull of its poles; another kind of surface is sampled and grown.
OtherFace other_face(const TopoDS_Face& face, const std::vector<EdgeCurve>& edges) {
  OtherFace result;
  for (const EdgeCurve& edge : edges) {
    for (int i = 0; i <= 8; ++i) {
      extend(result.box, point_along(edge, i / 8.0).at);
    }
  }
  const BRepAdaptor_Surface surface(face, Standard_False);
  if (surface.GetType() == GeomAbs_BSplineSurface) {
    const Handle(Geom_BSplineSurface) spline = surface.BSpline();
    for (int u = 1; u <= spline->NbUPoles(); ++u) {
      for (int v = 1; v <= spline->NbVPoles(); ++v) {
        extend(result.box, from_occt(spline->Pole(u, v)));
      }
    }
  } else {
    result.box = grown(result.box, diagonal(result.box));
  }
  return result;
}

// A free-form face's share, by the kernel's own integration; it needs curves in the surface's
// parameters, which a file need not bring: then a repaired copy of the face is measured.
double generic_flux(const TopoDS_Face& face, Point origin) {
  bool complete = true;
  for (TopExp_Explorer it(face, TopAbs_EDGE); it.More() && complete; it.Next()) {
    double first = 0.0;
    double last = 0.0;
    complete = !BRep_Tool::CurveOnSurface(TopoDS::Edge(it.Current()), face, first, last).IsNull();
  }
  TopoDS_Shape measured = face;
  if (!complete) {
    ShapeFix_Shape fix(face);
    fix.Perform();
    measured = fix.Shape();
  }
  double flux = 0.0;
  for (TopExp_Explorer it(measured, TopAbs_FACE); it.More(); it.Next()) {
    BRepGProp_Face integrand(TopoDS::Face(it.Current()));
    BRepGProp_Domain domain(TopoDS::Face(it.Current()));
    BRepGProp_Vinert volume;
    volume.SetLocation(to_pnt(origin));
    volume.Perform(integrand, domain);
    flux += 3.0 * volume.Mass();
  }
  return flux;
}

double add_solid(const TopoDS_Shape& solid, Point origin, Product& product) {
  double flux = 0.0;
  for (TopExp_Explorer it(solid, TopAbs_FACE); it.More(); it.Next()) {
    const TopoDS_Face& face = TopoDS::Face(it.Current());
    const std::vector<EdgeCurve> edges = edges_of(face);
    const FaceSurface surface = face_surface(face);
    ++product.faces;
    if (surface.kind == FaceSurface::Kind::other) {
      product.others.push_back(other_face(face, edges));
    }
    add_face(product, surface, edges);
    const auto plain = face_flux(surface, edges, origin);
    flux += plain ? *plain : generic_flux(face, origin);
  }
  return flux;
}

Point first_point(const TopoDS_Shape& shape) {
  for (TopExp_Explorer it(shape, TopAbs_VERTEX); it.More(); it.Next()) {
    return from_occt(BRep_Tool::Pnt(TopoDS::Vertex(it.Current())));
  }
  return {};
}

// A file may hold its solids inside out; then every face's material is on the other side.
void turn_over(Product& product) {
  const auto other = [](Side side) {
    return side == Side::internal ? Side::external : Side::internal;
  };
  for (Cylinder& c : product.cylinders) {
    c.side = other(c.side);
  }
  for (Cone& c : product.cones) {
    c.side = other(c.side);
  }
  for (Plane& p : product.planes) {
    p.normal = -p.normal;
    p.outline = mapped(p.outline, {{0.0, 0.0}, 1.0, 0.0, 0.0, -1.0});
  }
}

}  // namespace

void analyse_shape(const TopoDS_Shape& shape, Product& product) {
  const Point origin = first_point(shape);
  for (TopExp_Explorer it(shape, TopAbs_SOLID); it.More(); it.Next()) {
    ++product.solids;
    product.volume += add_solid(it.Current(), origin, product) / 3.0;
    for (TopExp_Explorer shell(it.Current(), TopAbs_SHELL); shell.More(); shell.Next()) {
      product.closed = product.closed && BRep_Tool::IsClosed(shell.Current());
    }
  }
  if (product.volume < 0.0) {
    turn_over(product);
    product.volume = -product.volume;
  }
  finish_features(product);
  find_widths(product);
  name_features(product);
}

}  // namespace spotblue
