#pragma once
// Which feature of which part each face of a transferred file belongs to.

#include <TopoDS_Shape.hxx>
#include <TopoDS_TShape.hxx>
#include <cstddef>
#include <map>
#include <unordered_map>
#include <vector>

#include "geometry/tree/product_tree.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

class FaceBook {
 public:
  struct Place {
    ProductId part{};      // also an index into the tree's parts
    std::size_t face = 0;  // of its shape, 1-based
  };

  // The model's products are the tree's parts, analysed. Both must outlive this.
  FaceBook(const Tree& tree, const Model& model);

  // Every place of the face: several where a part holds copies of a solid; none for faces of no
  // part, and for copies that were mirrored or scaled.
  [[nodiscard]] const std::vector<Place>& places(const TopoDS_Shape& face) const;

  // Null for faces of no feature. A part's features are looked up when first asked for.
  [[nodiscard]] const ProductFeatureRef* feature(const Place& place);

 private:
  const Tree& tree_;
  const Model& model_;
  std::unordered_map<const TopoDS_TShape*, std::vector<Place>> places_;
  std::map<ProductId, std::map<std::size_t, ProductFeatureRef>> features_;
};

}  // namespace spotblue
