#include "document_marks.hpp"

#include <fmt/format.h>

#include <TDF_ChildIDIterator.hxx>
#include <TDataStd_Comment.hxx>
#include <XCAFDoc_ColorTool.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "document_faces.hpp"
#include "marks.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

namespace {

// Stands on each label that carries a colour of ours, with the colour it had before.
constexpr const char* kRemark = "spotblue mark";

Handle(XCAFDoc_ColorTool) colours_of(const Handle(TDocStd_Document) & document) {
  return XCAFDoc_DocumentTool::ColorTool(document->Main());
}

std::string remark_on(const TDF_Label& label) {
  Handle(TDataStd_Comment) comment;
  if (!label.FindAttribute(TDataStd_Comment::GetID(), comment)) {
    return {};
  }
  const TCollection_AsciiString text(comment->Get());
  return text.ToCString();
}

void set_mark(const Subject& subject, const TDF_Label& label, Mark mark) {
  const Handle(XCAFDoc_ColorTool) tool = colours_of(subject.document);
  if (!remark_on(label).starts_with(kRemark)) {
    Quantity_Color before;
    std::string remark = kRemark;
    if (tool->GetColor(label, XCAFDoc_ColorSurf, before)) {
      remark += fmt::format(", was {}", Quantity_Color::ColorToHex(before).ToCString());
    }
    TDataStd_Comment::Set(label, remark.c_str());
  }
  tool->SetColor(label, mark_colour(mark), XCAFDoc_ColorSurf);
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
  const Handle(XCAFDoc_ColorTool) tool = colours_of(document);
  std::vector<TDF_Label> marked;
  const TDF_Label main = document->Main();
  for (TDF_ChildIDIterator each(main, TDataStd_Comment::GetID(), Standard_True); each.More();
       each.Next()) {
    if (remark_on(each.Value()->Label()).starts_with(kRemark)) {
      marked.push_back(each.Value()->Label());
    }
  }
  for (const TDF_Label& label : marked) {
    const std::string remark = remark_on(label);
    const std::size_t hex = remark.find('#');
    Quantity_Color before;
    if (hex != std::string::npos &&
        Quantity_Color::ColorFromHex(remark.substr(hex).c_str(), before)) {
      tool->SetColor(label, before, XCAFDoc_ColorSurf);
    } else {
      tool->UnSetColor(label, XCAFDoc_ColorSurf);
    }
    label.ForgetAttribute(TDataStd_Comment::GetID());
  }
  return marked.size();
}

Json set_marks(const Subject& subject) {
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
        const Product& product = subject.look.model.products[key.product];
        result.push_back(entry(product.id + ": " + name_of(product, key), mark, labels));
      }
    }
  }
  for (const auto& [product, mark] : marks.parts) {
    const TDF_Label label = label_of_product(subject, product);
    set_mark(subject, label, mark);
    result.push_back(entry(subject.look.model.products[product].id, mark, {label}));
  }
  return result;
}

}  // namespace spotblue::plugin
