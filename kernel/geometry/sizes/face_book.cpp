#include "geometry/sizes/face_book.hpp"

#include <TopExp.hxx>
#include <TopTools_IndexedMapOfShape.hxx>

#include "spotblue/geometry/feature_faces.hpp"

namespace spotblue {

FaceBook::FaceBook(const Tree& tree, const Model& model) : tree_(tree), model_(model) {
  for (ProductId part; part < tree.parts.size(); ++part) {
    TopTools_IndexedMapOfShape faces;
    TopExp::MapShapes(tree.parts[part].shape, TopAbs_FACE, faces);
    for (int i = 1; i <= faces.Extent(); ++i) {
      places_[faces(i).TShape().get()].push_back({part, static_cast<std::size_t>(i)});
    }
  }
}

const std::vector<FaceBook::Place>& FaceBook::places(const TopoDS_Shape& face) const {
  static const std::vector<Place> none;
  const auto found = places_.find(face.TShape().get());
  return found == places_.end() ? none : found->second;
}

const ProductFeatureRef* FaceBook::feature(const Place& place) {
  const auto [entry, fresh] = features_.try_emplace(place.part);
  if (fresh) {
    for (const FeatureFace& one :
         feature_faces(tree_.parts[place.part].shape, model_.products[place.part])) {
      entry->second.emplace(one.face, ProductFeatureRef{one.kind, one.index});
    }
  }
  const auto found = entry->second.find(place.face);
  return found == entry->second.end() ? nullptr : &found->second;
}

}  // namespace spotblue
