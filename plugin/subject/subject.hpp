#pragma once
// A document or shapes of a host program, looked at and judged: what the harness's commands and the
// service both work on.

#include <TDocStd_Document.hxx>
#include <TopoDS_Shape.hxx>
#include <optional>
#include <string>
#include <vector>

#include "spotblue/check/check.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/geometry/occt.hpp"

namespace spotblue::plugin {

/// A shape and its name; of a document's, the label's entry and name.
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
  std::vector<TopoDS_Shape> given;           ///< of shapes: as they were named
  std::vector<NamedPlace> places;            ///< of a document: what the look was at
  std::vector<std::string> sizes;            ///< of a document: what it stated then
  CheckResult result;                        ///< only the look until it is checked
  bool checked = false;
};

/// What a host holds: a document, or shapes where that is null.
struct Held {
  std::string name;
  Handle(TDocStd_Document) document;
  std::vector<NamedPlace> shapes;
};

/// Whether a document is there and is for parts and assemblies (XDE).
[[nodiscard]] bool is_xde(const Handle(TDocStd_Document) & document);

/// @throws Error bad_input when the document may not be changed now.
void require_changeable(const Handle(TDocStd_Document) & document);

/// @throws Error as model_of_document or model_of_shapes.
[[nodiscard]] Subject looked_at(const Held& held, const LookSettings& settings);

/// Looks at it and judges it by the job, whatever model that names.
/// @throws Error as looked_at and judge_job.
[[nodiscard]] Subject checked(const Held& held, Job job, const LookBounds& bounds);

/// Whether a document has the parts, where they were, that it had when it was looked at.
[[nodiscard]] bool has_same_shapes(const Subject& known);

/// What the document of the subject states now.
[[nodiscard]] std::vector<std::string> sizes_of(const Subject& subject);

/// A feature by its id, as sbfeatures lists it.
struct FoundFeature {
  ProductId product{};
  FeatureKind kind = FeatureKind::cylinder;
  std::size_t index = 0;
};

/// By its name; or, where only one of the part is called so, by what a face of it is called or by
/// its size and place, "Wheel: bore 44". Also takes the id or path of an occurrence in place of the
/// product's id.
[[nodiscard]] std::optional<FoundFeature> find_feature(const Model& model, const std::string& id);
/// By its size and place alone, "bore 44".
[[nodiscard]] std::optional<FoundFeature> find_sized(const Model& model,
                                                     const std::string& product_id,
                                                     const std::string& sized_name);
/// As sbfeatures lists it, "Wheel: bore".
[[nodiscard]] std::string id_of(const Model& model, const FoundFeature& feature);
[[nodiscard]] std::optional<ProductId> find_product(const Model& model, const std::string& id);

}  // namespace spotblue::plugin
