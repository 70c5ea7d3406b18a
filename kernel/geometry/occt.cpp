#include "spotblue/geometry/occt.hpp"

#include <TDF_Label.hxx>
#include <TopExp.hxx>
#include <TopExp_Explorer.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Shape.hxx>
#include <memory>
#include <optional>
#include <utility>

#include "geometry/document_sizes.hpp"
#include "geometry/document_tree.hpp"
#include "geometry/drawn_far.hpp"
#include "geometry/edge_curve.hpp"
#include "geometry/face_surface.hpp"
#include "geometry/feature_merge.hpp"
#include "geometry/finite_model.hpp"
#include "geometry/guard.hpp"
#include "geometry/shape_store.hpp"

namespace spotblue {
namespace {

Model model_of(Tree& tree) {
  if (tree.parts.empty()) {
    throw Error(ErrorCode::bad_input, {}, "there is no solid to look at", "load the parts first");
  }
  Model model;
  const auto store = std::make_shared<const ShapeStore>(make_shape_folder());
  add_products(tree, store->folder(), model);
  add_occurrences(tree, model);
  model.file.unit = "mm";
  model.shapes = store;
  return model;
}

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
              (station(cylinder.axis, *point) > cylinder.intervals.front().first - kOnEdge &&
               station(cylinder.axis, *point) < cylinder.intervals.back().second + kOnEdge));
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

Model model_of_shapes(std::span<const NamedShape> shapes) {
  std::vector<std::pair<std::string, TopoDS_Shape>> named;
  for (const NamedShape& one : shapes) {
    named.emplace_back(one.name, *one.shape);
  }
  return guarded("looking at the shapes", [&] {
    Tree tree = tree_of_shapes(named);
    Model model = model_of(tree);
    require_finite(model, {}, Completeness::all_or_error);
    return model;
  });
}

DocumentModel model_of_document(const TDF_Label& main, const std::string& name) {
  return guarded("looking at the document", [&] {
    DocumentTree read = read_document_tree(main);
    DocumentModel result{model_of(read.tree), std::move(read.labels)};
    result.model.file.name = name;
    SettledSizes stated = settled_in_document(main, read.tree, result.model).settled;
    result.model.semantic_sizes = std::move(stated.sizes);
    result.model.notes.insert(result.model.notes.end(), stated.notes.begin(), stated.notes.end());
    require_finite(result.model, {}, Completeness::all_or_error);
    return result;
  });
}

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
