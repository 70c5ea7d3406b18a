#include "plugin/subject/document_faces.hpp"

#include <TDF_Tool.hxx>
#include <TopExp.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>

#include "spotblue/base/error.hpp"
#include "spotblue/geometry/feature_faces.hpp"

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

TDF_Label label_of_product(const Subject& subject, ProductId product) {
  return label_at(subject.document, subject.product_labels[product]);
}

std::vector<TDF_Label> face_labels(const Subject& subject, const FoundFeature& feature) {
  const Handle(XCAFDoc_ShapeTool) tool = XCAFDoc_DocumentTool::ShapeTool(subject.document->Main());
  const TDF_Label part_label = label_of_product(subject, feature.product);
  const TopoDS_Shape& shape = subject.product_shapes[feature.product];
  const Product& product = subject.result.look.model.products[feature.product];
  TopTools_IndexedMapOfShape faces;
  TopExp::MapShapes(shape, TopAbs_FACE, faces);
  std::vector<TDF_Label> labels;
  for (const FeatureFace& face : feature_faces(shape, product)) {
    if (belongs(face, feature, product)) {
      const TDF_Label label = tool->AddSubShape(part_label, faces(static_cast<int>(face.face)));
      if (!label.IsNull()) {
        labels.push_back(label);
      }
    }
  }
  return labels;
}

}  // namespace spotblue::plugin
