#pragma once
/// @file
/// Which faces of a shape of Open CASCADE make up a feature. What occt.hpp says of shapes holds
/// here too.

#include <cstddef>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/feature_kind.hpp"
#include "spotblue/geometry/model.hpp"

class TopoDS_Shape;

namespace spotblue {

/// A face of a product's shape and the feature it belongs to.
struct FeatureFace {
  std::size_t face = 0;  ///< 1-based, in the order of TopExp::MapShapes(shape, TopAbs_FACE)
  FeatureKind kind = FeatureKind::cylinder;  ///< never width, which is two planes
  std::size_t index = 0;                     ///< into the product's list of that kind
  bool operator==(const FeatureFace&) const = default;
};

/// The features that the faces of a product's shape make up; faces of no feature are left out.
/// @param shape  what `product` was analysed from, or a shape of it.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<FeatureFace> feature_faces(const TopoDS_Shape& shape,
                                                                     const Product& product);

}  // namespace spotblue
