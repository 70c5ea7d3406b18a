#include "session.hpp"

#include <fmt/format.h>

#include <DBRep.hxx>
#include <DDocStd.hxx>
#include <TDF_LabelSequence.hxx>
#include <TDF_Tool.hxx>
#include <TDataStd_Name.hxx>
#include <TopLoc_Location.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <algorithm>
#include <gp_Trsf.hxx>
#include <map>

#include "command.hpp"
#include "document_faces.hpp"
#include "spotblue/base/nearest.hpp"
#include "tcl_value.hpp"

namespace spotblue::plugin {
namespace {

std::map<std::string, Subject>& subjects() {
  static std::map<std::string, Subject> known;
  return known;
}

Handle(TDocStd_Document) find_document(const std::string& name) {
  Handle(TDocStd_Document) document;
  Standard_CString text = name.c_str();
  if (name.empty() || !DDocStd::GetDocument(text, document, Standard_False)) {
    return {};
  }
  // A new document has no shapes yet, but its format says what it is for.
  const TCollection_AsciiString format(document->StorageFormat());
  return XCAFDoc_DocumentTool::CheckShapeTool(document->Main()) || format.Search("XCAF") > 0
             ? document
             : Handle(TDocStd_Document)();
}

TopLoc_Location location_of(const Frame& frame) {
  const auto& r = frame.rows;
  gp_Trsf placement;
  placement.SetValues(r[0][0], r[0][1], r[0][2], r[0][3], r[1][0], r[1][1], r[1][2], r[1][3],
                      r[2][0], r[2][1], r[2][2], r[2][3]);
  return TopLoc_Location(placement);
}

// Parts and where they are placed: what a look at the document sees.
std::vector<NamedPlace> places_in(const Handle(TDocStd_Document) & document) {
  std::vector<NamedPlace> places;
  const auto add = [&](const TDF_Label& label) {
    Handle(TDataStd_Name) name;
    label.FindAttribute(TDataStd_Name::GetID(), name);
    const TCollection_AsciiString text = name.IsNull() ? "" : TCollection_AsciiString(name->Get());
    // The kernel may put an assembly together anew though nothing in it has changed.
    places.push_back({entry_of(label) + " " + text.ToCString(),
                      XCAFDoc_ShapeTool::IsAssembly(label) ? TopoDS_Shape()
                                                           : XCAFDoc_ShapeTool::GetShape(label)});
  };
  TDF_LabelSequence labels;
  XCAFDoc_DocumentTool::ShapeTool(document->Main())->GetShapes(labels);
  for (const TDF_Label& label : labels) {
    add(label);
    TDF_LabelSequence components;
    XCAFDoc_ShapeTool::GetComponents(label, components);
    for (const TDF_Label& component : components) {
      add(component);
    }
  }
  return places;
}

std::vector<std::string> sizes_of(const Subject& subject) {
  std::vector<std::string> sizes;
  for (const DocumentSize& one : sizes_of_document(subject.document->Main(), subject.look.model)) {
    sizes.push_back(one.label + " " + semantic_size_text(one.size) + " " + one.size.doubt);
  }
  return sizes;
}

bool is_as_it_was(const Subject& known) {
  if (known.document.IsNull()) {
    const std::vector<std::string> words = words_of(known.name);
    return std::ranges::equal(words, known.placed,
                              [](const std::string& word, const TopoDS_Shape& placed) {
                                const TopoDS_Shape now = DBRep::GetExisting(word.c_str());
                                return !now.IsNull() && now.IsEqual(placed);
                              });
  }
  return std::ranges::equal(
      known.places, places_in(known.document), [](const NamedPlace& was, const NamedPlace& is) {
        return was.name == is.name &&
               (was.shape.IsNull() ? is.shape.IsNull()
                                   : !is.shape.IsNull() && was.shape.IsEqual(is.shape));
      });
}

Subject looked_at_document(const std::string& name, const Handle(TDocStd_Document) & document,
                           const LookSettings& settings) {
  Subject result;
  result.name = name;
  result.document = document;
  DocumentModel read = model_of_document(document->Main(), name);
  result.product_labels = std::move(read.product_labels);
  result.look = look_at(std::move(read.model), settings);
  for (const std::string& label : result.product_labels) {
    result.product_shapes.push_back(XCAFDoc_ShapeTool::GetShape(label_at(document, label)));
  }
  for (const Occurrence& occurrence : result.look.model.occurrences) {
    result.placed.push_back(result.product_shapes[occurrence.product].Moved(
        location_of(occurrence.frame), Standard_False));
  }
  result.places = places_in(document);
  result.sizes = sizes_of(result);
  return result;
}

Subject looked_at_shapes(const std::string& name, const LookSettings& settings) {
  Subject result;
  result.name = name;
  std::vector<NamedShape> named;
  for (const std::string& word : words_of(name)) {
    const TopoDS_Shape shape = DBRep::GetExisting(word.c_str());
    if (shape.IsNull()) {
      throw mistake(fmt::format("'{}'", word), "is neither an XDE document nor a shape",
                    "read a document with ReadStep or Open, or make the shape first");
    }
    result.placed.push_back(shape);
    named.push_back({word, nullptr});
  }
  for (std::size_t i = 0; i < named.size(); ++i) {
    named[i].shape = &result.placed[i];
  }
  result.look = look_at(model_of_shapes(named), settings);
  const Model& model = result.look.model;
  result.look.model.file.name = name;
  result.product_shapes.resize(model.products.size());
  for (std::size_t i = 0; i < model.occurrences.size(); ++i) {
    result.product_shapes[model.occurrences[i].product] =
        result.placed[i].Located(TopLoc_Location());
  }
  return result;
}

}  // namespace

Subject& look_anew(const std::string& name, const LookSettings& settings) {
  const Handle(TDocStd_Document) document = find_document(name);
  subjects().insert_or_assign(name, document.IsNull()
                                        ? looked_at_shapes(name, settings)
                                        : looked_at_document(name, document, settings));
  return subjects().at(name);
}

Subject& subject(const std::string& name) {
  const auto known = subjects().find(name);
  if (known == subjects().end() || known->second.document != find_document(name) ||
      !is_as_it_was(known->second)) {
    return look_anew(name, {});
  }
  Subject& found = known->second;
  if (found.checked && !found.document.IsNull() && sizes_of(found) != found.sizes) {
    found.checked = false;
    found.findings.clear();
  }
  return found;
}

Subject& document_subject(const std::string& name) {
  static_cast<void>(document_named(name));
  return subject(name);
}

Handle(TDocStd_Document) document_named(const std::string& name) {
  Handle(TDocStd_Document) document = find_document(name);
  if (document.IsNull()) {
    throw mistake(fmt::format("'{}'", name), "is no XDE document",
                  "read one with ReadStep or Open, or make one with XNewDoc and XAddShape");
  }
  return document;
}

std::optional<std::size_t> find_product(const Model& model, const std::string& id) {
  for (std::size_t i = 0; i < model.products.size(); ++i) {
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
  const Product& part = model.products[*product];
  std::optional<FoundFeature> found;
  const auto look_in = [&](const auto& features, FeatureKind kind) {
    for (std::size_t i = 0; i < features.size() && !found; ++i) {
      if (features[i].name == name) {
        found = {*product, kind, i};
      }
    }
  };
  look_in(part.cylinders, FeatureKind::cylinder);
  look_in(part.cones, FeatureKind::cone);
  look_in(part.planes, FeatureKind::plane);
  look_in(part.widths, FeatureKind::width);
  return found;
}

FoundFeature feature_named(const Subject& subject, const std::string& id) {
  if (const auto found = find_feature(subject.look.model, id)) {
    return *found;
  }
  std::vector<std::string> known;
  for (const Product& product : subject.look.model.products) {
    const auto add = [&](const auto& features) {
      for (const auto& feature : features) {
        known.push_back(product.id + ": " + feature.name);
      }
    };
    add(product.cylinders);
    add(product.cones);
    add(product.planes);
    add(product.widths);
  }
  throw mistake(fmt::format("'{}'", id), "is no feature of the parts",
                fmt::format("did you mean '{}'? sbfeatures {} lists them all",
                            nearest_word(id, known), subject.name));
}

}  // namespace spotblue::plugin
