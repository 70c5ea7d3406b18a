#include "plugin/subject/document_findings.hpp"

#include <fmt/chrono.h>
#include <fmt/format.h>

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
#include <cmath>
#include <ctime>
#include <nlohmann/json.hpp>
#include <string>

#include "plugin/subject/document_faces.hpp"

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
void keep(const Handle(TDataStd_NamedData) & data, const std::string& key, const Json& value) {
  if (value.is_object()) {
    for (const auto& [inner, item] : value.items()) {
      keep(data, fmt::format("{}.{}", key, inner), item);
    }
  } else if (value.is_array()) {
    for (std::size_t i = 0; i < value.size(); ++i) {
      keep(data, fmt::format("{}.{}", key, i + 1), value[i]);
    }
  } else if (value.is_string()) {
    data->SetString(text_of(key), text_of(value.get<std::string>()));
  } else if (value.is_number_integer() && std::abs(value.get<double>()) < 1e9) {
    data->SetInteger(text_of(key), value.get<int>());
  } else {
    data->SetReal(text_of(key), value.get<double>());
  }
}

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
  // In the order of schema 1; what is not there goes again.
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
std::vector<TDF_Label> labels_of(const Subject& subject, const Json& finding) {
  std::vector<TDF_Label> labels;
  for (const Json& about : finding["about"]) {
    const std::string id = about.get<std::string>();
    if (const auto feature = find_feature(subject.look.model, id)) {
      const std::vector<TDF_Label> faces = face_labels(subject, *feature);
      labels.insert(labels.end(), faces.begin(), faces.end());
    } else if (const auto part = find_product(subject.look.model, id)) {
      labels.push_back(label_of_product(subject, *part));
    }
  }
  return labels;
}

std::string words_for(const Json& finding) {
  std::string text = fmt::format("{} {}: ", finding["outcome"].get<std::string>(),
                                 finding["id"].get<std::string>());
  for (std::size_t i = 0; i < finding["about"].size(); ++i) {
    text += (i == 0 ? "" : " with ") + finding["about"][i].get<std::string>();
  }
  const std::string advice = finding.value("advice", "");
  const std::string caution = finding.value("caution", "");
  return text + (advice.empty() ? "" : ": " + advice) +
         (caution.empty() ? "" : ". Caution: " + caution);
}

}  // namespace

std::size_t keep_findings(const Subject& subject, const Json& findings) {
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
  int tag = 0;
  for (const Json& finding : findings) {
    const TDF_Label label = home.FindChild(++tag);
    TDataStd_Name::Set(label, text_of(finding["id"].get<std::string>()));
    const Handle(TDataStd_NamedData) data = TDataStd_NamedData::Set(label);
    for (const auto& [key, value] : finding.items()) {
      keep(data, key, value);
    }
    const std::vector<TDF_Label> about =
        finding["outcome"] == "conforming" ? std::vector<TDF_Label>() : labels_of(subject, finding);
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
