#include "plugin/subject/subject.hpp"

#include <TDF_Data.hxx>
#include <TDF_LabelSequence.hxx>
#include <TDataStd_Name.hxx>
#include <TopExp_Explorer.hxx>
#include <TopLoc_Location.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <algorithm>
#include <gp_Trsf.hxx>
#include <gp_Vec.hxx>
#include <optional>
#include <utility>

#include "geometry/occt/occt_values.hpp"
#include "plugin/subject/document_faces.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/feature_names.hpp"
#include "spotblue/geometry/occt.hpp"
#include "spotblue/geometry/sizes.hpp"

namespace spotblue::plugin {
namespace {

// Of the product's shape as the document draws it.
TopLoc_Location location_of(const Occurrence& occurrence, const Product& product) {
  const Point& near = product.drawn_at;
  gp_Trsf to_near;
  to_near.SetTranslation(gp_Vec(-near.x, -near.y, -near.z));
  return TopLoc_Location(to_trsf(occurrence.frame) * to_near);
}

// The solid of a part's shape that is its body; the shape itself where it has only one.
TopoDS_Shape body_of(const TopoDS_Shape& part, std::optional<int> body) {
  if (!body) {
    return part;
  }
  TopExp_Explorer solid(part, TopAbs_SOLID);
  for (int i = 1; i < *body; ++i) {
    solid.Next();
  }
  return solid.Current();
}

// What the faces of a part are called: features are named by it.
void add_face_names(const TDF_Label& part, std::vector<NamedPlace>& places) {
  TDF_LabelSequence faces;
  XCAFDoc_ShapeTool::GetSubShapes(part, faces);
  for (const TDF_Label& face : faces) {
    Handle(TDataStd_Name) name;
    if (face.FindAttribute(TDataStd_Name::GetID(), name)) {
      const TCollection_AsciiString text(name->Get());
      places.push_back({entry_of(face) + " " + text.ToCString(), {}});
    }
  }
}

std::vector<FoundFeature> features_of(const Model& model, ProductId product) {
  const Product& part = model.products[product];
  std::vector<FoundFeature> all;
  const auto add = [&](const auto& features, FeatureKind kind) {
    for (std::size_t i = 0; i < features.size(); ++i) {
      all.push_back({product, kind, i});
    }
  };
  add(part.cylinders, FeatureKind::cylinder);
  add(part.cones, FeatureKind::cone);
  add(part.planes, FeatureKind::plane);
  add(part.widths, FeatureKind::width);
  return all;
}

auto of_feature(const Model& model, const FoundFeature& feature, const auto& take) {
  const Product& part = model.products[feature.product];
  switch (feature.kind) {
    case FeatureKind::cylinder:
      return take(part.cylinders[feature.index]);
    case FeatureKind::cone:
      return take(part.cones[feature.index]);
    case FeatureKind::plane:
      return take(part.planes[feature.index]);
    case FeatureKind::width:
      break;
  }
  return take(part.widths[feature.index]);
}

std::optional<FoundFeature> only_one(const Model& model, ProductId product, const auto& is_called) {
  std::optional<FoundFeature> found;
  for (const FoundFeature& feature : features_of(model, product)) {
    if (of_feature(model, feature, is_called)) {
      if (found) {
        return std::nullopt;
      }
      found = feature;
    }
  }
  return found;
}

// Parts, what their faces are called and where they are placed: what a look at the document sees.
std::vector<NamedPlace> places_in(const Handle(TDocStd_Document) & document) {
  std::vector<NamedPlace> places;
  const auto add = [&](const TDF_Label& label) {
    Handle(TDataStd_Name) name;
    label.FindAttribute(TDataStd_Name::GetID(), name);
    const TCollection_AsciiString text = name.IsNull() ? "" : TCollection_AsciiString(name->Get());
    // Open CASCADE may put an assembly together anew though nothing in it has changed.
    places.push_back({entry_of(label) + " " + text.ToCString(),
                      XCAFDoc_ShapeTool::IsAssembly(label) ? TopoDS_Shape()
                                                           : XCAFDoc_ShapeTool::GetShape(label)});
  };
  TDF_LabelSequence labels;
  XCAFDoc_DocumentTool::ShapeTool(document->Main())->GetShapes(labels);
  for (const TDF_Label& label : labels) {
    add(label);
    add_face_names(label, places);
    TDF_LabelSequence components;
    XCAFDoc_ShapeTool::GetComponents(label, components);
    for (const TDF_Label& component : components) {
      add(component);
    }
  }
  return places;
}

Subject taken(const Held& held) {
  Subject subject;
  subject.name = held.name;
  subject.document = held.document;
  for (const NamedPlace& one : held.shapes) {
    subject.given.push_back(one.shape);
  }
  return subject;
}

Model model_of(const Held& held, Subject& subject) {
  if (!held.document.IsNull()) {
    DocumentModel read = model_of_document(held.document->Main(), held.name);
    subject.product_labels = std::move(read.product_labels);
    return std::move(read.model);
  }
  std::vector<NamedShape> named;
  for (const NamedPlace& one : held.shapes) {
    named.push_back({one.name, &one.shape});
  }
  Model model = model_of_shapes(named);
  model.file.name = held.name;
  return model;
}

void place_document(Subject& subject) {
  const Model& model = subject.result.look.model;
  for (std::size_t i = 0; i < subject.product_labels.size(); ++i) {
    const TDF_Label label = label_at(subject.document, subject.product_labels[i]);
    subject.product_shapes.push_back(
        body_of(XCAFDoc_ShapeTool::GetShape(label), model.products[i].body));
  }
  for (const Occurrence& occurrence : model.occurrences) {
    const ProductId product = occurrence.product;
    subject.placed.push_back(subject.product_shapes[product].Moved(
        location_of(occurrence, model.products[product]), Standard_False));
  }
  subject.places = places_in(subject.document);
  subject.sizes = sizes_of(subject);
}

void place_shapes(const std::vector<NamedPlace>& shapes, Subject& subject) {
  const Model& model = subject.result.look.model;
  subject.product_shapes.resize(model.products.size());
  std::size_t next = 0;  // of the shapes given
  for (const Occurrence& occurrence : model.occurrences) {
    const std::optional<int> body = model.products[occurrence.product].body;
    next += body.value_or(1) == 1 ? 1 : 0;
    const TopoDS_Shape& given = shapes[next - 1].shape;
    subject.placed.push_back(body_of(given, body));
    subject.product_shapes[occurrence.product] = body_of(given.Located(TopLoc_Location()), body);
  }
}

// The shapes of what was looked at, where they lie.
void place(const Held& held, Subject& subject) {
  if (held.document.IsNull()) {
    place_shapes(held.shapes, subject);
  } else {
    place_document(subject);
  }
}

}  // namespace

bool is_xde(const Handle(TDocStd_Document) & document) {
  // A new document has no shapes yet, but its format says what it is for.
  return !document.IsNull() &&
         (XCAFDoc_DocumentTool::CheckShapeTool(document->Main()) ||
          TCollection_AsciiString(document->StorageFormat()).Search("XCAF") > 0);
}

void require_changeable(const Handle(TDocStd_Document) & document) {
  if (!document->GetData()->IsModificationAllowed()) {
    throw Error(ErrorCode::bad_input, {}, "the document may not be changed now",
                "open a command of it first, or have nothing kept or marked in it");
  }
}

std::vector<std::string> sizes_of(const Subject& subject) {
  std::vector<std::string> sizes;
  for (const DocumentSize& one :
       sizes_of_document(subject.document->Main(), subject.result.look.model)) {
    sizes.push_back(one.label + " " + semantic_size_text(one.size) + " " + one.size.doubt);
  }
  return sizes;
}

bool has_same_shapes(const Subject& known) {
  return std::ranges::equal(
      known.places, places_in(known.document), [](const NamedPlace& was, const NamedPlace& is) {
        return was.name == is.name &&
               (was.shape.IsNull() ? is.shape.IsNull()
                                   : !is.shape.IsNull() && was.shape.IsEqual(is.shape));
      });
}

Subject looked_at(const Held& held, const LookSettings& settings) {
  Subject subject = taken(held);
  subject.result.look = look_at([&] { return model_of(held, subject); }, settings);
  place(held, subject);
  return subject;
}

Subject checked(const Held& held, Job job, const LookBounds& bounds) {
  Subject subject = taken(held);
  subject.result =
      check({.job = std::move(job), .model = [&] { return model_of(held, subject); }}, bounds);
  subject.checked = true;
  place(held, subject);
  return subject;
}

std::optional<ProductId> find_product(const Model& model, const std::string& id) {
  for (ProductId i; i < model.products.size(); ++i) {
    if (model.products[i].id == id) {
      return i;
    }
  }
  for (const Occurrence& occurrence : model.occurrences) {
    if (occurrence.id == id || occurrence.path == id) {
      return occurrence.product;
    }
  }
  return std::nullopt;
}

std::optional<FoundFeature> find_feature(const Model& model, const std::string& id) {
  const std::size_t colon = id.rfind(": ");
  const auto product =
      colon == std::string::npos ? std::nullopt : find_product(model, id.substr(0, colon));
  if (!product) {
    return std::nullopt;
  }
  const std::string name = id.substr(colon + 2);
  // As the ids of what was found have it, even where the name is another's size too.
  if (auto found = only_one(model, *product, [&](const auto& one) { return one.name == name; })) {
    return found;
  }
  const std::vector<ProductFeatureRef> called = features_called(model.products[*product], name);
  return called.size() == 1
             ? std::optional(FoundFeature{*product, called.front().kind, called.front().index})
             : std::nullopt;
}

std::optional<FoundFeature> find_sized(const Model& model, const std::string& product_id,
                                       const std::string& sized_name) {
  const auto product = find_product(model, product_id);
  return product ? only_one(model, *product,
                            [&](const auto& one) { return one.sized_name == sized_name; })
                 : std::nullopt;
}

std::string id_of(const Model& model, const FoundFeature& feature) {
  return model.products[feature.product].id + ": " +
         of_feature(model, feature, [](const auto& one) { return one.name; });
}

}  // namespace spotblue::plugin
