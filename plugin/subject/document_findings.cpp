#include "plugin/subject/document_findings.hpp"

#include <fmt/chrono.h>
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <TColStd_DataMapOfStringInteger.hxx>
#include <TDF_ChildIterator.hxx>
#include <TDF_LabelSequence.hxx>
#include <TDataStd_DataMapOfStringReal.hxx>
#include <TDataStd_DataMapOfStringString.hxx>
#include <TDataStd_Name.hxx>
#include <TDataStd_NamedData.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_Note.hxx>
#include <XCAFDoc_NotesTool.hxx>
#include <cstdint>
#include <cstdlib>
#include <ctime>
#include <nlohmann/json.hpp>
#include <string>
#include <utility>
#include <variant>

#include "plugin/subject/document_faces.hpp"
#include "spotblue/report/sentence_text.hpp"
#include "spotblue/report/values.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

namespace {

// Beneath the document's main label, clear of the labels that Open CASCADE's own tools take there.
constexpr int kTag = 1401;
constexpr const char* kTitle = "spotblue findings";
constexpr const char* kAuthor = "spotblue";

TCollection_ExtendedString text_of(const std::string& utf8) {
  return TCollection_ExtendedString(utf8.c_str(), Standard_True);
}

std::string utf8_of(const TCollection_ExtendedString& text) {
  return TCollection_AsciiString(text).ToCString();
}

// "margin.clearance_min_mm": a key of an object within the finding, or a place in a list (about.1).
class Keeping {
 public:
  Keeping(const Handle(TDataStd_NamedData) & data, std::string key)
      : data_(data), key_(std::move(key)) {}

  void operator()(const Value::Object& object) const {
    for (const Member& inner : object) {
      keep(inner.key, inner.value);
    }
  }
  void operator()(const Value::List& list) const {
    for (std::size_t i = 0; i < list.size(); ++i) {
      keep(std::to_string(i + 1), list[i]);
    }
  }
  void operator()(const std::string& text) const { data_->SetString(text_of(key_), text_of(text)); }
  void operator()(bool truth) const { (*this)(std::int64_t{truth ? 1 : 0}); }
  void operator()(double number) const { data_->SetReal(text_of(key_), number); }
  void operator()(std::int64_t number) const {
    if (std::abs(number) < kMostWhole) {
      data_->SetInteger(text_of(key_), static_cast<int>(number));
    } else {
      (*this)(static_cast<double>(number));
    }
  }

 private:
  static constexpr std::int64_t kMostWhole = 1'000'000'000;

  void keep(const std::string& inner, const Value& value) const {
    std::visit(Keeping(data_, key_.empty() ? inner : key_ + "." + inner), value.held);
  }

  Handle(TDataStd_NamedData) data_;
  std::string key_;
};

void put_back(Json& finding, const std::string& key, const Json& value) {
  const std::size_t dot = key.find('.');
  const std::string outer = key.substr(0, dot);
  if (dot == std::string::npos) {
    finding[outer] = value;
  } else if (outer == "about") {
    const auto place = static_cast<std::size_t>(std::stoul(key.substr(dot + 1)));
    Json& list = finding[outer];
    while (list.size() < place) {
      list.push_back("");
    }
    list[place - 1] = value;
  } else {
    finding[outer][key.substr(dot + 1)] = value;
  }
}

Json kept(const Handle(TDataStd_NamedData) & data) {
  // In the order of schema 2; what is not there goes again.
  Json finding{{"id", ""},
               {"kind", ""},
               {"about", Json::array()},
               {"outcome", ""},
               {"wanted", Json::object()},
               {"found", Json::object()},
               {"margin", Json::object()}};
  data->LoadDeferredData();
  for (TDataStd_DataMapOfStringString::Iterator each(data->GetStringsContainer()); each.More();
       each.Next()) {
    put_back(finding, utf8_of(each.Key()), utf8_of(each.Value()));
  }
  for (TDataStd_DataMapOfStringReal::Iterator each(data->GetRealsContainer()); each.More();
       each.Next()) {
    put_back(finding, utf8_of(each.Key()), each.Value());
  }
  for (TColStd_DataMapOfStringInteger::Iterator each(data->GetIntegersContainer()); each.More();
       each.Next()) {
    put_back(finding, utf8_of(each.Key()), each.Value());
  }
  for (const char* part : {"wanted", "found", "margin"}) {
    if (finding[part].empty()) {
      finding.erase(part);
    }
  }
  return finding;
}

void drop_notes(const Handle(XCAFDoc_NotesTool) & notes) {
  TDF_LabelSequence labels;
  notes->GetNotes(labels);
  for (TDF_LabelSequence::Iterator each(labels); each.More(); each.Next()) {
    const Handle(XCAFDoc_Note) note = XCAFDoc_Note::Get(each.Value());
    if (!note.IsNull() && utf8_of(note->UserName()) == kAuthor) {
      notes->DeleteNote(each.Value());
    }
  }
}

// Labels that a finding is about: faces of its features, or its parts.
std::vector<TDF_Label> labels_of(const Subject& subject, const Finding& finding) {
  std::vector<TDF_Label> labels;
  for (const Reference& about : finding.about) {
    if (const auto feature = find_feature(subject.result.look.model, about.name)) {
      const std::vector<TDF_Label> faces = face_labels(subject, *feature);
      labels.insert(labels.end(), faces.begin(), faces.end());
    } else if (const auto part = find_product(subject.result.look.model, about.name)) {
      labels.push_back(label_of_product(subject, *part));
    }
  }
  return labels;
}

std::string words_for(const Finding& finding) {
  std::string about;
  for (const Reference& one : finding.about) {
    about += (about.empty() ? "" : " with ") + one.name;
  }
  return fmt::format("{} {}: {}{}{}{}{}", outcome_name(finding.outcome), finding.id, about,
                     finding.advice.empty() ? "" : ": ", text_of(finding.advice),
                     finding.caution.empty() ? "" : ". Caution: ", text_of(finding.caution));
}

}  // namespace

std::size_t keep_findings(const Subject& subject) {
  require_changeable(subject.document);
  const TDF_Label home = subject.document->Main().FindChild(kTag);
  for (TDF_ChildIterator each(home); each.More(); each.Next()) {
    each.Value().ForgetAllAttributes();
  }
  TDataStd_Name::Set(home, kTitle);
  const Handle(XCAFDoc_NotesTool) notes = XCAFDoc_DocumentTool::NotesTool(subject.document->Main());
  drop_notes(notes);
  const std::string now = fmt::format("{:%Y-%m-%dT%H:%M:%SZ}", fmt::gmtime(std::time(nullptr)));
  std::size_t made = 0;
  const Value::List values = finding_values(subject.result.findings);
  for (std::size_t i = 0; i < values.size(); ++i) {
    const Finding& finding = subject.result.findings[i];
    const TDF_Label label = home.FindChild(static_cast<int>(i) + 1);
    TDataStd_Name::Set(label, text_of(finding.id));
    std::visit(Keeping(TDataStd_NamedData::Set(label), ""), values[i].held);
    const std::vector<TDF_Label> about = finding.outcome == Outcome::conforming
                                             ? std::vector<TDF_Label>()
                                             : labels_of(subject, finding);
    if (!about.empty()) {
      const Handle(XCAFDoc_Note) note =
          notes->CreateComment(kAuthor, text_of(now), text_of(words_for(finding)));
      for (const TDF_Label& one : about) {
        notes->AddNote(note->Label(), one);
      }
      ++made;
    }
  }
  return made;
}

Json kept_findings(const Handle(TDocStd_Document) & document) {
  Json findings = Json::array();
  const TDF_Label home = document->Main().FindChild(kTag, Standard_False);
  if (home.IsNull()) {
    return findings;
  }
  for (TDF_ChildIterator each(home); each.More(); each.Next()) {
    Handle(TDataStd_NamedData) data;
    if (each.Value().FindAttribute(TDataStd_NamedData::GetID(), data)) {
      findings.push_back(kept(data));
    }
  }
  return findings;
}

}  // namespace spotblue::plugin
