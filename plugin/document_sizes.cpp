#include "document_sizes.hpp"

#include <TCollection_HAsciiString.hxx>
#include <TDF_LabelSequence.hxx>
#include <XCAFDimTolObjects_DimensionFormVariance.hxx>
#include <XCAFDimTolObjects_DimensionGrade.hxx>
#include <XCAFDimTolObjects_DimensionObject.hxx>
#include <XCAFDoc_DimTolTool.hxx>
#include <XCAFDoc_Dimension.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <algorithm>
#include <array>
#include <cctype>
#include <string_view>

#include "command.hpp"
#include "document_faces.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue::plugin {
namespace {

// In the order of the kernel's enumerations.
constexpr std::array<std::string_view, 29> kLetters{
    "",  "A", "B", "C", "CD", "D", "E", "EF", "F", "FG", "G", "H",  "JS", "J", "K",
    "M", "N", "P", "R", "S",  "T", "U", "V",  "X", "Y",  "Z", "ZA", "ZB", "ZC"};
constexpr std::array<std::string_view, 20> kGrades{"01", "0",  "1",  "2",  "3",  "4",  "5",
                                                   "6",  "7",  "8",  "9",  "10", "11", "12",
                                                   "13", "14", "15", "16", "17", "18"};

template <std::size_t N>
std::string_view at(const std::array<std::string_view, N>& table, int index) {
  return index >= 0 && static_cast<std::size_t>(index) < N ? table[static_cast<std::size_t>(index)]
                                                           : std::string_view();
}

std::string in_case(std::string_view letters, SizeKind kind) {
  std::string text(letters);
  if (kind == SizeKind::shaft) {
    std::ranges::transform(text, text.begin(),
                           [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  }
  return text;
}

std::string class_of(const Handle(XCAFDimTolObjects_DimensionObject) & size) {
  Standard_Boolean hole = Standard_False;
  auto letter = XCAFDimTolObjects_DimensionFormVariance_None;
  auto grade = XCAFDimTolObjects_DimensionGrade_IT01;
  if (!size->GetClassOfTolerance(hole, letter, grade)) {
    return {};
  }
  const std::string_view letters = at(kLetters, letter);
  const std::string_view number = at(kGrades, grade);
  return letters.empty() || number.empty()
             ? std::string()
             : in_case(letters, hole ? SizeKind::hole : SizeKind::shaft) + std::string(number);
}

Handle(XCAFDimTolObjects_DimensionObject)
    sized(const std::string& feature, bool width, Length nominal,
          const std::string& tolerance_class) {
  const std::size_t digits = tolerance_class.find_first_of("0123456789");
  const std::string letters = tolerance_class.substr(0, digits);
  const std::string number = digits == std::string::npos ? "" : tolerance_class.substr(digits);
  const SizeKind kind = size_kind(tolerance_class);
  const auto letter = std::ranges::find_if(
      kLetters, [&](std::string_view one) { return in_case(one, kind) == letters; });
  const auto grade = std::ranges::find(kGrades, number);
  if (letter == kLetters.end() || letter->empty() || grade == kGrades.end()) {
    throw mistake(tolerance_class, "can not be said in a document of the kernel",
                  "choose a class of ISO 286 with one of its letters and a grade from 01 to 18");
  }
  Handle(XCAFDimTolObjects_DimensionObject) size = new XCAFDimTolObjects_DimensionObject;
  size->SetType(width ? XCAFDimTolObjects_DimensionType_Location_LinearDistance
                      : XCAFDimTolObjects_DimensionType_Size_Diameter);
  size->SetSemanticName(new TCollection_HAsciiString(feature.c_str()));
  size->SetValue(nominal.in_mm());
  size->SetClassOfTolerance(
      kind == SizeKind::hole,
      static_cast<XCAFDimTolObjects_DimensionFormVariance>(letter - kLetters.begin()),
      static_cast<XCAFDimTolObjects_DimensionGrade>(grade - kGrades.begin()));
  return size;
}

Handle(XCAFDoc_DimTolTool) tool_of(const Subject& subject) {
  return XCAFDoc_DocumentTool::DimTolTool(subject.document->Main());
}

}  // namespace

std::vector<DocumentSize> sizes_in(const Subject& subject) {
  const Handle(XCAFDoc_DimTolTool) tool = tool_of(subject);
  TDF_LabelSequence labels;
  tool->GetDimensionLabels(labels);
  std::vector<DocumentSize> sizes;
  for (TDF_LabelSequence::Iterator each(labels); each.More(); each.Next()) {
    Handle(XCAFDoc_Dimension) dimension;
    if (!each.Value().FindAttribute(XCAFDoc_Dimension::GetID(), dimension)) {
      continue;
    }
    const Handle(XCAFDimTolObjects_DimensionObject) object = dimension->GetObject();
    if (object.IsNull() || object->GetValues().IsNull()) {
      continue;
    }
    DocumentSize size;
    size.label = each.Value();
    TDF_LabelSequence first;
    TDF_LabelSequence second;
    tool->GetRefShapeLabel(size.label, first, second);
    first.Append(second);
    size.faces.assign(first.begin(), first.end());
    size.feature = feature_at(subject, size.faces);
    size.tolerance_class = class_of(object);
    size.nominal = Length::mm(object->GetValue());
    sizes.push_back(size);
  }
  return sizes;
}

std::size_t remove_classes(const Subject& subject, const std::string& feature) {
  std::size_t removed = 0;
  for (const DocumentSize& size : sizes_in(subject)) {
    if (size.feature == feature) {
      size.label.ForgetAllAttributes();
      ++removed;
    }
  }
  return removed;
}

void set_class(const Subject& subject, const std::string& feature, Length nominal,
               const std::string& tolerance_class) {
  const FoundFeature found = feature_named(subject, feature);
  const bool width = found.kind == FeatureKind::width;
  const auto size = sized(feature, width, nominal, tolerance_class);
  const std::vector<TDF_Label> faces = face_labels(subject, found);
  if (faces.empty() || (width && faces.size() < 2)) {
    throw mistake(feature, "has no faces in the document",
                  "run sblook again and look at its names");
  }
  remove_classes(subject, feature);
  const Handle(XCAFDoc_DimTolTool) tool = tool_of(subject);
  const TDF_Label label = tool->AddDimension();
  TDF_LabelSequence first;
  TDF_LabelSequence second;
  for (const TDF_Label& face : faces) {
    (width && !first.IsEmpty() ? second : first).Append(face);
  }
  tool->SetDimension(first, second, label);
  Handle(XCAFDoc_Dimension) dimension;
  label.FindAttribute(XCAFDoc_Dimension::GetID(), dimension);
  dimension->SetObject(size);
}

}  // namespace spotblue::plugin
