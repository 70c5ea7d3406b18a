#pragma once
/// @file
/// For programs that hold shapes of the Open CASCADE kernel in memory already: a Model from an XDE
/// document or from shapes by name, and which faces make up a feature.
///
/// The only public header that knows the kernel, by forward declaration; include the kernel's own
/// headers to call it. Everything here runs in the caller's process and trusts its shapes: what
/// crashes the kernel crashes the caller, unlike read_step. Not thread-safe. No shape is changed.

#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/seats.hpp"

class TDF_Label;
class TopoDS_Shape;

namespace spotblue {

/// A part by the name its host knows it by.
struct NamedShape {
  std::string name;
  const TopoDS_Shape* shape = nullptr;  ///< lives as long as the call; never null
};

/// The model of shapes: each a part with its solids, placed as it lies (in mm).
///
/// A shape given twice in two places is one product, called by its first name; each occurrence has
/// its own name as its path.
/// @throws Error bad_input when there is none, or one is null, holds no solid or is scaled;
///         file_access when no temporary folder can be made.
[[nodiscard]] Model model_of_shapes(std::span<const NamedShape> shapes);

/// A model and where in the document its products are.
struct DocumentModel {
  Model model;
  /// Entry of the label of each product: "0:1:1:2".
  std::vector<std::string> product_labels;
};

/// The model of an XDE document: the same products, features, names and occurrences that read_step
/// finds in the file it was read from, in mm. file.name is `name`; sha256 and protocol are empty.
///
/// @param main  TDocStd_Document::Main() of the document.
/// @throws Error bad_input when the document holds no solid, has lengths other than mm, or places a
///         part scaled; file_access when no temporary folder can be made.
[[nodiscard]] DocumentModel model_of_document(const TDF_Label& main, const std::string& name);

/// A face of a product's shape and the feature it belongs to.
struct FeatureFace {
  std::size_t face = 0;  ///< 1-based, in the order of TopExp::MapShapes(shape, TopAbs_FACE)
  FeatureKind kind = FeatureKind::cylinder;  ///< never width, which is two planes
  std::size_t index = 0;                     ///< into the product's list of that kind
  bool operator==(const FeatureFace&) const = default;
};

/// The features that the faces of a product's shape make up; faces of no feature are left out.
/// @param shape  what `product` was analysed from, or a shape of it.
[[nodiscard]] std::vector<FeatureFace> feature_faces(const TopoDS_Shape& shape,
                                                     const Product& product);

}  // namespace spotblue
