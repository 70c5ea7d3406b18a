#include "plugin/subject/document_marks.hpp"

#include <Standard_GUID.hxx>
#include <TDF_ChildIDIterator.hxx>
#include <TDF_Tool.hxx>
#include <TDataStd_AsciiString.hxx>
#include <TDataStd_TreeNode.hxx>
#include <XCAFDoc.hxx>
#include <XCAFDoc_ColorTool.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <algorithm>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "plugin/subject/document_faces.hpp"
#include "plugin/subject/marks.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

namespace {

// What a mark needs to be taken off again, on the label that it colours: the entry of its colour,
// and behind a blank that of the colour before, where there was one. Its own attribute, so that
// comments of the document's owner stay theirs.
const Standard_GUID kMarkId("b1a3c8a4-6b1f-4c02-9f0e-2c5c0a5a7d31");
// On a colour that the table has for marks only.
const Standard_GUID kOwnColourId("5d0be6c6-52fd-4a1c-8a3f-0f6f3a9b1c74");

constexpr XCAFDoc_ColorType kSide = XCAFDoc_ColorSurf;

Handle(XCAFDoc_ColorTool) colours_of(const Handle(TDocStd_Document) & document) {
  return XCAFDoc_DocumentTool::ColorTool(document->Main());
}

// Empty where it has none.
std::string colour_on(const TDF_Label& label) {
  TDF_Label colour;
  return XCAFDoc_ColorTool::GetColor(label, kSide, colour) ? entry_of(colour) : std::string();
}

struct Remark {
  std::string ours, before;  // entries of colours
};

std::optional<Remark> remark_on(const TDF_Label& label) {
  Handle(TDataStd_AsciiString) text;
  if (!label.FindAttribute(kMarkId, text)) {
    return std::nullopt;
  }
  const std::string words = text->Get().ToCString();
  const std::size_t blank = std::min(words.find(' '), words.size());
  return Remark{words.substr(0, blank), words.substr(std::min(blank + 1, words.size()))};
}

void set_mark(const Subject& subject, const TDF_Label& label, Mark mark) {
  const Handle(XCAFDoc_ColorTool) tool = colours_of(subject.document);
  const std::string now = colour_on(label);
  const std::optional<Remark> known = remark_on(label);
  const std::string before = known && known->ours == now ? known->before : now;
  TDF_Label colour;
  if (!tool->FindColor(mark_colour(mark), colour)) {
    colour = tool->AddColor(mark_colour(mark));
    TDataStd_AsciiString::Set(colour, kOwnColourId, "spotblue");
  }
  tool->SetColor(label, colour, kSide);
  TDataStd_AsciiString::Set(label, kMarkId, (entry_of(colour) + " " + before).c_str());
}

// The colour before; what was coloured anew since it was marked stays as it is.
void take_mark_off(const Handle(TDocStd_Document) & document, const TDF_Label& label) {
  const Handle(XCAFDoc_ColorTool) tool = colours_of(document);
  const Remark remark = *remark_on(label);
  label.ForgetAttribute(kMarkId);
  if (colour_on(label) != remark.ours) {
    return;
  }
  TDF_Label before;
  if (!remark.before.empty()) {
    TDF_Tool::Label(document->GetData(), remark.before.c_str(), before, Standard_False);
  }
  if (!before.IsNull() && tool->IsColor(before)) {
    tool->SetColor(label, before, kSide);
  } else {
    tool->UnSetColor(label, kSide);
  }
}

bool is_used(const TDF_Label& colour) {
  for (const XCAFDoc_ColorType side : {XCAFDoc_ColorGen, XCAFDoc_ColorSurf, XCAFDoc_ColorCurv}) {
    Handle(TDataStd_TreeNode) users;
    if (colour.FindAttribute(XCAFDoc::ColorRefGUID(side), users) && users->HasFirst()) {
      return true;
    }
  }
  return false;
}

std::vector<TDF_Label> labels_with(const TDF_Label& main, const Standard_GUID& id) {
  std::vector<TDF_Label> labels;
  for (TDF_ChildIDIterator each(main, id, Standard_True); each.More(); each.Next()) {
    labels.push_back(each.Value()->Label());
  }
  return labels;
}

const std::string& name_of(const Product& product, const FeatureKey& key) {
  return key.kind == FeatureKind::cylinder ? product.cylinders[key.index].name
         : key.kind == FeatureKind::cone   ? product.cones[key.index].name
         : key.kind == FeatureKind::plane  ? product.planes[key.index].name
                                           : product.widths[key.index].name;
}

Json entry(const std::string& about, Mark mark, const std::vector<TDF_Label>& labels) {
  Json entries = Json::array();
  for (const TDF_Label& label : labels) {
    entries.push_back(entry_of(label));
  }
  return {{"about", about}, {"mark", mark_name(mark)}, {"labels", entries}};
}

}  // namespace

std::size_t clear_marks(const Handle(TDocStd_Document) & document) {
  const std::vector<TDF_Label> marked = labels_with(document->Main(), kMarkId);
  if (!marked.empty()) {
    require_changeable(document);
  }
  for (const TDF_Label& label : marked) {
    take_mark_off(document, label);
  }
  for (const TDF_Label& colour : labels_with(document->Main(), kOwnColourId)) {
    if (!is_used(colour)) {
      colours_of(document)->RemoveColor(colour);
    }
  }
  return marked.size();
}

Json set_marks(const Subject& subject) {
  require_changeable(subject.document);
  const Marks marks = marks_of(subject);
  Json result = Json::array();
  // A plane that is half of a width may be marked twice: the worse mark is set last.
  for (const Mark mark : {Mark::seat, Mark::conforming, Mark::undecided, Mark::nonconforming}) {
    for (const auto& [key, own] : marks.features) {
      if (own == mark) {
        const std::vector<TDF_Label> labels =
            face_labels(subject, {key.product, key.kind, key.index});
        for (const TDF_Label& label : labels) {
          set_mark(subject, label, mark);
        }
        const Product& product = subject.result.look.model.products[key.product];
        result.push_back(entry(product.id + ": " + name_of(product, key), mark, labels));
      }
    }
  }
  for (const auto& [product, mark] : marks.parts) {
    const TDF_Label label = label_of_product(subject, product);
    set_mark(subject, label, mark);
    result.push_back(entry(subject.result.look.model.products[product].id, mark, {label}));
  }
  return result;
}

}  // namespace spotblue::plugin
