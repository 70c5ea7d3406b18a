#include "document_faces.hpp"

#include <TDF_Tool.hxx>
#include <TopExp.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <algorithm>
#include <optional>

#include "spotblue/base/error.hpp"

namespace spotblue::plugin {
namespace {

bool belongs(const FeatureFace& face, const FoundFeature& feature, const Product& product) {
  if (feature.kind == FeatureKind::width) {
    const Width& width = product.widths[feature.index];
    return face.kind == FeatureKind::plane &&
           (face.index == width.first || face.index == width.second);
  }
  return face.kind == feature.kind && face.index == feature.index;
}

std::string name_of(const Product& product, const FeatureFace& face) {
  switch (face.kind) {
    case FeatureKind::cylinder:
      return product.cylinders[face.index].name;
    case FeatureKind::cone:
      return product.cones[face.index].name;
    case FeatureKind::plane:
      return product.planes[face.index].name;
    case FeatureKind::width:
      break;
  }
  return product.widths[face.index].name;
}

bool all_of(const Product& product, const FoundFeature& feature,
            const std::vector<FeatureFace>& faces) {
  return std::ranges::all_of(
      faces, [&](const FeatureFace& face) { return belongs(face, feature, product); });
}

// The one feature that all the faces are of; two opposite planes are a width.
std::string id_of_all(const Product& product, const std::vector<FeatureFace>& faces) {
  if (all_of(product, {0, faces.front().kind, faces.front().index}, faces)) {
    return product.id + ": " + name_of(product, faces.front());
  }
  for (std::size_t i = 0; i < product.widths.size(); ++i) {
    if (all_of(product, {0, FeatureKind::width, i}, faces)) {
      return product.id + ": " + product.widths[i].name;
    }
  }
  return {};
}

struct Part {
  TopTools_IndexedMapOfShape faces;
  std::vector<FeatureFace> features;
};

Part part_of(const Subject& subject, std::size_t product) {
  const TopoDS_Shape& shape = subject.product_shapes[product];
  Part part;
  TopExp::MapShapes(shape, TopAbs_FACE, part.faces);
  part.features = feature_faces(shape, subject.look.model.products[product]);
  return part;
}

}  // namespace

TDF_Label label_at(const Handle(TDocStd_Document) & document, const std::string& entry) {
  TDF_Label label;
  TDF_Tool::Label(document->GetData(), entry.c_str(), label, Standard_False);
  if (label.IsNull()) {
    throw Error(ErrorCode::bad_input, {"", entry}, "the document has no such label any more",
                "run sblook again: the document was changed");
  }
  return label;
}

std::string entry_of(const TDF_Label& label) {
  TCollection_AsciiString entry;
  TDF_Tool::Entry(label, entry);
  return entry.ToCString();
}

TDF_Label label_of_product(const Subject& subject, std::size_t product) {
  return label_at(subject.document, subject.product_labels[product]);
}

std::vector<TDF_Label> face_labels(const Subject& subject, const FoundFeature& feature) {
  const Handle(XCAFDoc_ShapeTool) tool = XCAFDoc_DocumentTool::ShapeTool(subject.document->Main());
  const TDF_Label part_label = label_of_product(subject, feature.product);
  const Part part = part_of(subject, feature.product);
  const Product& product = subject.look.model.products[feature.product];
  std::vector<TDF_Label> labels;
  for (const FeatureFace& face : part.features) {
    if (belongs(face, feature, product)) {
      const TDF_Label label =
          tool->AddSubShape(part_label, part.faces(static_cast<int>(face.face)));
      if (!label.IsNull()) {
        labels.push_back(label);
      }
    }
  }
  return labels;
}

std::string feature_at(const Subject& subject, const std::vector<TDF_Label>& faces) {
  std::optional<std::size_t> product;
  std::vector<FeatureFace> found;
  Part part;
  for (const TDF_Label& label : faces) {
    const auto entry = std::ranges::find(subject.product_labels, entry_of(label.Father()));
    const auto number = static_cast<std::size_t>(entry - subject.product_labels.begin());
    if (entry == subject.product_labels.end() || number != product.value_or(number)) {
      return {};
    }
    if (!product) {
      product = number;
      part = part_of(subject, number);
    }
    const int index = part.faces.FindIndex(XCAFDoc_ShapeTool::GetShape(label));
    const auto face = std::ranges::find_if(
        part.features, [&](const FeatureFace& one) { return static_cast<int>(one.face) == index; });
    if (face == part.features.end()) {
      return {};
    }
    found.push_back(*face);
  }
  return found.empty() ? std::string() : id_of_all(subject.look.model.products[*product], found);
}

}  // namespace spotblue::plugin
