#include "plugin/harness/document_sizes.hpp"

#include <TDF_LabelSequence.hxx>
#include <XCAFDoc_DimTolTool.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <algorithm>
#include <utility>

#include "plugin/harness/command.hpp"
#include "plugin/subject/document_faces.hpp"
#include "spotblue/geometry/sizes.hpp"

namespace spotblue::plugin {
namespace {

Handle(XCAFDoc_DimTolTool) tool_of(const Subject& subject) {
  return XCAFDoc_DocumentTool::DimTolTool(subject.document->Main());
}

void append(const std::vector<TDF_Label>& labels, TDF_LabelSequence& sequence) {
  for (const TDF_Label& label : labels) {
    sequence.Append(label);
  }
}

// A width goes from the one plane's faces to the other's.
void add_faces(const Subject& subject, const FoundFeature& feature, TDF_LabelSequence& near,
               TDF_LabelSequence& far) {
  if (feature.kind != FeatureKind::width) {
    append(face_labels(subject, feature), near);
    return;
  }
  const Width& width = subject.result.look.model.products[feature.product].widths[feature.index];
  append(face_labels(subject, {feature.product, FeatureKind::plane, width.first}), near);
  append(face_labels(subject, {feature.product, FeatureKind::plane, width.second}), far);
}

bool has(const SizeThere& there, const std::string& feature) {
  return std::ranges::find(there.features, feature) != there.features.end();
}

// Leaves the size to its other features; takes it away when there are none.
void take_off(const Subject& subject, const SizeThere& there, const std::string& feature) {
  TDF_LabelSequence near;
  TDF_LabelSequence far;
  for (const std::string& other : there.features) {
    if (other != feature) {
      add_faces(subject, feature_named(subject, other), near, far);
    }
  }
  if (near.IsEmpty()) {
    there.label.ForgetAllAttributes();
  } else {
    tool_of(subject)->SetDimension(near, far, there.label);
  }
}

}  // namespace

std::vector<SizeThere> sizes_in(const Subject& subject) {
  std::vector<SizeThere> sizes;
  for (DocumentSize& one : sizes_of_document(subject.document->Main(), subject.result.look.model)) {
    SizeThere there;
    there.label = label_at(subject.document, one.label);
    TDF_LabelSequence near;
    TDF_LabelSequence far;
    tool_of(subject)->GetRefShapeLabel(there.label, near, far);
    near.Append(far);
    there.faces.assign(near.begin(), near.end());
    for (const ProductFeatureRef& feature : one.size.features) {
      there.features.push_back(
          id_of(subject.result.look.model, {*one.size.product, feature.kind, feature.index}));
    }
    there.size = std::move(one.size);
    sizes.push_back(std::move(there));
  }
  return sizes;
}

std::size_t dimensions_in(const Subject& subject) {
  TDF_LabelSequence labels;
  if (XCAFDoc_DocumentTool::CheckDimTolTool(subject.document->Main())) {
    tool_of(subject)->GetDimensionLabels(labels);
  }
  return static_cast<std::size_t>(labels.Length());
}

std::size_t remove_sizes(const Subject& subject, const std::string& feature) {
  std::size_t removed = 0;
  for (const SizeThere& there : sizes_in(subject)) {
    if (has(there, feature)) {
      take_off(subject, there, feature);
      ++removed;
    }
  }
  return removed;
}

void set_size(const Subject& subject, const std::vector<std::string>& features, SemanticSize size) {
  TDF_LabelSequence near;
  TDF_LabelSequence far;
  for (const std::string& feature : features) {
    const FoundFeature found = feature_named(subject, feature);
    const bool width = found.kind == FeatureKind::width;
    const int before = near.Length();
    add_faces(subject, found, near, far);
    if (near.Length() == before || (width && far.IsEmpty())) {
      throw mistake(feature, "has no faces in the document",
                    "run sblook again and look at its names");
    }
    if (width || size.characteristic != SizeCharacteristic::radius) {
      size.characteristic = width ? SizeCharacteristic::width : SizeCharacteristic::diameter;
    }
    static_cast<void>(remove_sizes(subject, feature));
  }
  size.name = features.front();
  const TDF_Label label = tool_of(subject)->AddDimension();
  tool_of(subject)->SetDimension(near, far, label);
  state_size(label, size);
}

}  // namespace spotblue::plugin
