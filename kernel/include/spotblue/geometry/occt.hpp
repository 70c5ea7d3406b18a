#pragma once
/// @file
/// For programs that hold shapes of Open CASCADE in memory already: a Model from an XDE document or
/// from shapes by name.
///
/// This header, sizes.hpp and feature_faces.hpp know Open CASCADE, by forward declaration; include
/// its own headers to call them. Everything in them runs in the caller's process and trusts its
/// shapes: what crashes Open CASCADE crashes the caller, unlike read_step. Not thread-safe. No
/// shape is changed.

#include <span>
#include <string>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/model.hpp"

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
///         file_access or system when no temporary folder can be made.
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
///         file_access or system when no temporary folder can be made.
[[nodiscard]] SPOTBLUE_EXPORT DocumentModel model_of_document(const TDF_Label& main,
                                                              const std::string& name);

}  // namespace spotblue
