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
#include <string_view>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/unit.hpp"
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

/// The model of shapes: each a part, placed as it lies (in mm).
///
/// A shape given twice in two places is one product, called by its first name; each occurrence has
/// its own name as its path. Each solid of a shape with several is a body: a product and an
/// occurrence of its own ("pin#1", "pin#2"), in the order of TopExp_Explorer(shape, TopAbs_SOLID).
/// Names are made one line of UTF-8.
/// @throws Error bad_input when there is none, or one is null, holds no solid or is scaled;
///         unreadable when one unfolds without end, deeper or to more than ReadLimits allow, or has
///         a number that is infinite or none;
///         file_access when no temporary folder can be made.
[[nodiscard]] SPOTBLUE_EXPORT Model model_of_shapes(std::span<const NamedShape> shapes);

/// A model and where in the document its products are.
struct DocumentModel {
  Model model;
  /// Entry of the label of each product: "0:1:1:2"; the bodies of one part have one label.
  std::vector<std::string> product_labels;
};

/// The model of an XDE document: the same products, features, names and occurrences that read_step
/// finds in the file it was read from, in mm, and the sizes that the document states. file.name is
/// `name`; sha256 and protocol are empty.
///
/// @param main  TDocStd_Document::Main() of the document.
/// @throws Error bad_input when the document holds no solid, has lengths other than mm, or places a
///         part scaled; unreadable when it places one nowhere, an assembly contains itself or
///         unfolds deeper or to more than ReadLimits allow, or a number is infinite or none;
///         file_access when no temporary folder can be made.
[[nodiscard]] SPOTBLUE_EXPORT DocumentModel model_of_document(const TDF_Label& main,
                                                              const std::string& name);

/// A size that a document states, and the entry of its label: "0:1:4:1".
struct DocumentSize {
  std::string label;
  SemanticSize size;  ///< entity is 0
};

/// The sizes (XCAFDoc_Dimension) that the document states now, on the features of the model that
/// was made of it; model_of_document puts the same into Model::semantic_sizes, with notes.
///
/// Signed deviations are taken as they are. In doubt is what this kernel (7.6) can not tell: a
/// positive lower deviation that may as well lie below, and deviations that came through its STEP
/// reader, which drops signs and units; unless a description named kSizeWordsName tells, as
/// write_semantic_sizes puts it in a file.
/// @throws Error bad_input when the document has other parts than the model.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<DocumentSize> sizes_of_document(const TDF_Label& main,
                                                                          const Model& model);

/// Name of a dimension's description that holds semantic_size_text() of it.
inline constexpr std::string_view kSizeWordsName = "size in mm";

/// Puts a size's name, values, class and kSizeWordsName description into the dimension on a label
/// of a document; what else the dimension has is kept, unless it is of another characteristic.
/// @throws Error bad_input when the label has no dimension or the document can not say the class.
SPOTBLUE_EXPORT void state_size(const TDF_Label& dimension, const SemanticSize& size);

/// Reads "H7", "38 H7", "1 1/2 in +0.001/0", "38 +-0.1", "37.9 to 38.1" and all that
/// semantic_size_text writes: nominal, class, deviations and limits; the rest is left as it is.
/// Of two deviations the smaller is the lower one; they have the unit of the nominal.
///
/// @param unit  of a bare number.
/// @throws Error bad_input when the words are none of that; a class is not looked up.
[[nodiscard]] SPOTBLUE_EXPORT SemanticSize parse_size(std::string_view words, LengthUnit unit);

/// Why a size with product and features could not be judged by, as the notes would say it: reversed
/// limits, a size that the model does not have, a class of the other kind; empty when it could.
[[nodiscard]] SPOTBLUE_EXPORT std::string doubt_about(const Model& model, SemanticSize size);

/// Whether this kernel's STEP reader passes over such a class, so that its limits should stand
/// beside it: it knows no J and no j.
[[nodiscard]] SPOTBLUE_EXPORT bool needs_limits(std::string_view tolerance_class);

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
