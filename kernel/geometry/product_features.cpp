#include "geometry/product_features.hpp"

#include <BRepAdaptor_Surface.hxx>
#include <BRep_Tool.hxx>
#include <Geom_BSplineSurface.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>
#include <algorithm>
#include <cmath>

#include "geometry/edge_curve.hpp"
#include "geometry/face_flux.hpp"
#include "geometry/feature_merge.hpp"
#include "geometry/feature_names.hpp"
#include "geometry/feature_split.hpp"
#include "geometry/free_form_flux.hpp"
#include "geometry/occt_values.hpp"
#include "geometry/shell_facing.hpp"
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
Box box_of(const TopoDS_Face& face, const std::vector<EdgeCurve>& edges) {
  Box box;
  for (const EdgeCurve& edge : edges) {
    for (int i = 0; i <= 8; ++i) {
      extend(box, point_along(edge, i / 8.0).at);
    }
  }
  const BRepAdaptor_Surface surface(face, Standard_False);
  if (surface.GetType() == GeomAbs_BSplineSurface) {
    const Handle(Geom_BSplineSurface) spline = surface.BSpline();
    for (int u = 1; u <= spline->NbUPoles(); ++u) {
      for (int v = 1; v <= spline->NbVPoles(); ++v) {
        extend(box, from_occt(spline->Pole(u, v)));
      }
    }
  } else {
    box = grown(box, diagonal(box));
  }
  return box;
}

ReadFace read_face(const TopoDS_Face& face, Point origin) {
  ReadFace result{face_surface(face), edges_of(face), {}, 0.0};
  if (result.surface.kind == FaceSurface::Kind::other) {
    result.box = box_of(face, result.edges);
  }
  const auto plain = face_flux(result.surface, result.edges, origin);
  result.flux = plain ? *plain : free_form_flux(face, origin);
  return result;
}

struct ReadShell {
  std::vector<ReadFace> faces;
  double flux = 0.0;  // three times the volume it encloses, negative when its faces look in
  int facing = 1;
};

ReadShell read_shell(const TopoDS_Shape& shell, Point origin) {
  ReadShell result;
  for (TopExp_Explorer it(shell, TopAbs_FACE); it.More(); it.Next()) {
    result.faces.push_back(read_face(TopoDS::Face(it.Current()), origin));
    result.flux += result.faces.back().flux;
  }
  result.facing = shell_facing(result.faces);
  return result;
}

// A file may hold a shell inside out, whichever it is: the largest encloses the solid and its faces
// look out, all others enclose voids and look in. Gives the solid's volume.
double add_solid(const TopoDS_Shape& solid, Point origin, Product& product) {
  std::vector<ReadShell> shells;
  for (TopExp_Explorer it(solid, TopAbs_SHELL); it.More(); it.Next()) {
    product.closed = product.closed && BRep_Tool::IsClosed(it.Current());
    shells.push_back(read_shell(it.Current(), origin));
  }
  const auto outer = std::max_element(
      shells.begin(), shells.end(),
      [](const ReadShell& a, const ReadShell& b) { return std::abs(a.flux) < std::abs(b.flux); });
  double flux = 0.0;
  for (auto shell = shells.begin(); shell != shells.end(); ++shell) {
    const int wanted = shell == outer ? 1 : -1;
    for (ReadFace& face : shell->faces) {
      if (shell->facing != wanted) {
        turn_over(face);
      }
      flux += face.flux;
      ++product.faces;
      if (face.surface.kind == FaceSurface::Kind::other) {
        OtherFace other;
        other.box = face.box;
        product.others.push_back(other);
      }
      add_face(product, face.surface, face.edges);
    }
  }
  return flux / 3.0;
}

Point first_point(const TopoDS_Shape& shape) {
  for (TopExp_Explorer it(shape, TopAbs_VERTEX); it.More(); it.Next()) {
    return from_occt(BRep_Tool::Pnt(TopoDS::Vertex(it.Current())));
  }
  return {};
}

}  // namespace

void analyse_shape(const TopoDS_Shape& shape, Product& product) {
  const Point origin = first_point(shape);
  for (TopExp_Explorer it(shape, TopAbs_SOLID); it.More(); it.Next()) {
    ++product.solids;
    product.volume += add_solid(it.Current(), origin, product);
  }
  finish_features(product);
  divide_cylinders(product);
  find_widths(product);
  name_features(product);
}

}  // namespace spotblue
