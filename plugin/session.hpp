#pragma once
// What the plug-in knows of the documents and shapes that the harness holds.

#include <TDocStd_Document.hxx>
#include <TopoDS_Shape.hxx>
#include <optional>
#include <string>
#include <vector>

#include "spotblue/check/check.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/geometry/occt.hpp"

namespace spotblue::plugin {

/// A label's entry and name, and the shape there.
struct NamedPlace {
  std::string name;
  TopoDS_Shape shape;
};

/// A document or a list of shapes as it was when it was looked at.
struct Subject {
  std::string name;
  Handle(TDocStd_Document) document;         ///< null for shapes
  std::vector<std::string> product_labels;   ///< of a document
  std::vector<TopoDS_Shape> product_shapes;  ///< each in its own frame
  std::vector<TopoDS_Shape> placed;          ///< by occurrence, where it lies in the assembly
  std::vector<NamedPlace> places;            ///< of a document: what the look was at
  std::vector<std::string> sizes;            ///< of a document: what it stated then
  Look look;
  bool checked = false;
  Job job;  ///< what it was checked by
  std::vector<Finding> findings;
};

/// The subject of that name: an XDE document, or a Tcl list of names of shapes. Looks at it when
/// that was not done yet, or when its shapes have changed since or another document has the name;
/// what was checked is forgotten when the sizes have changed.
/// @throws Error bad_input when the name is neither.
Subject& subject(const std::string& name);

/// The same, looked at anew: for what has changed since.
Subject& look_anew(const std::string& name, const LookSettings& settings);

/// subject() for what only a document can hold.
/// @throws Error bad_input also when the name is that of shapes.
Subject& document_subject(const std::string& name);

/// The XDE document of that name, without a look at it.
/// @throws Error bad_input when there is none.
[[nodiscard]] Handle(TDocStd_Document) document_named(const std::string& name);

/// A feature by its id, as sbfeatures lists it.
struct FoundFeature {
  std::size_t product = 0;
  FeatureKind kind = FeatureKind::cylinder;
  std::size_t index = 0;
};

/// Also takes the id or path of an occurrence in place of the product's id.
[[nodiscard]] std::optional<FoundFeature> find_feature(const Model& model, const std::string& id);
[[nodiscard]] std::optional<std::size_t> find_product(const Model& model, const std::string& id);

/// @throws Error bad_input naming the nearest feature.
[[nodiscard]] FoundFeature feature_named(const Subject& subject, const std::string& id);

}  // namespace spotblue::plugin
