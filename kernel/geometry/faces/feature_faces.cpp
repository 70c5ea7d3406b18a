#include "spotblue/geometry/feature_faces.hpp"

#include <TopExp.hxx>
#include <TopExp_Explorer.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Shape.hxx>
#include <optional>

#include "geometry/faces/drawn_far.hpp"
#include "geometry/faces/feature_merge.hpp"
#include "geometry/occt/guard.hpp"
#include "geometry/surfaces/edge_curve.hpp"
#include "geometry/surfaces/face_surface.hpp"

namespace spotblue {
namespace {

std::optional<Point> edge_point(const TopoDS_Shape& face) {
  for (TopExp_Explorer each(face, TopAbs_EDGE); each.More(); each.Next()) {
    if (const auto edge = edge_curve(TopoDS::Edge(each.Current()))) {
      return edge->from;
    }
  }
  return std::nullopt;
}

template <typename Feature, typename Test>
void find_feature(const std::vector<Feature>& features, FeatureKind kind, std::size_t face,
                  const Test& test, std::vector<FeatureFace>& found) {
  for (std::size_t i = 0; i < features.size(); ++i) {
    if (test(features[i])) {
      found.push_back({face, kind, i});
      return;
    }
  }
}

FaceSurface turned_over(FaceSurface surface) {
  surface.side = surface.side == Side::internal ? Side::external : Side::internal;
  if (surface.kind == FaceSurface::Kind::plane) {
    surface.axis.along = -surface.axis.along;
  }
  return surface;
}

enum class Skin { outward, inside_out };

std::vector<FeatureFace> faces_as(const TopTools_IndexedMapOfShape& faces, const Product& product,
                                  Skin skin) {
  std::vector<FeatureFace> found;
  for (int i = 1; i <= faces.Extent(); ++i) {
    const FaceSurface read = face_surface(TopoDS::Face(faces(i)), product.uncertainty);
    const FaceSurface surface = skin == Skin::outward ? read : turned_over(read);
    const auto number = static_cast<std::size_t>(i);
    const auto same = [&](const auto& feature) {
      return on_surface_of(feature, surface, product.uncertainty);
    };
    const auto point = edge_point(faces(i));
    // Equal journals with something between are on one surface and yet two features.
    const auto same_stretch = [&](const Cylinder& cylinder) {
      constexpr double kOnEdge = 1e-3;  // mm
      return same(cylinder) &&
             (!point ||
              (station(cylinder.axis, *point) > cylinder.intervals.front().low - kOnEdge &&
               station(cylinder.axis, *point) < cylinder.intervals.back().high + kOnEdge));
    };
    find_feature(product.cylinders, FeatureKind::cylinder, number, same_stretch, found);
    find_feature(product.cones, FeatureKind::cone, number, same, found);
    if (point) {
      find_feature(
          product.planes, FeatureKind::plane, number,
          [&](const Plane& plane) {
            return on_surface_of(plane, surface, *point, product.uncertainty);
          },
          found);
    }
  }
  return found;
}

}  // namespace

std::vector<FeatureFace> feature_faces(const TopoDS_Shape& shape, const Product& product) {
  return guarded("finding the faces of features", [&] {
    TopTools_IndexedMapOfShape faces;
    TopExp::MapShapes(brought_near(shape, product.drawn_at), TopAbs_FACE, faces);
    std::vector<FeatureFace> outward = faces_as(faces, product, Skin::outward);
    std::vector<FeatureFace> inside_out = faces_as(faces, product, Skin::inside_out);
    return inside_out.size() > outward.size() ? inside_out : outward;
  });
}

}  // namespace spotblue
