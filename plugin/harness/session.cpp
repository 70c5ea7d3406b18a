#include "plugin/harness/session.hpp"

#include <fmt/format.h>
#include <tcl.h>

#include <DBRep.hxx>
#include <DDocStd.hxx>
#include <Draw_Interpretor.hxx>
#include <algorithm>
#include <charconv>
#include <optional>
#include <system_error>
#include <utility>

#include "plugin/harness/command.hpp"
#include "plugin/harness/tcl_value.hpp"
#include "spotblue/base/nearest.hpp"
#include "spotblue/job/bare_job.hpp"

namespace spotblue::plugin {
namespace {

Handle(TDocStd_Document) find_document(const std::string& name) {
  Handle(TDocStd_Document) document;
  Standard_CString text = name.c_str();
  if (name.empty() || !DDocStd::GetDocument(text, document, Standard_False)) {
    return {};
  }
  return is_xde(document) ? document : Handle(TDocStd_Document)();
}

bool is_as_it_was(const Subject& known) {
  if (!known.document.IsNull()) {
    return has_same_shapes(known);
  }
  const std::vector<std::string> words = words_of(known.name);
  return std::ranges::equal(words, known.given,
                            [](const std::string& word, const TopoDS_Shape& placed) {
                              const TopoDS_Shape now = DBRep::GetExisting(word.c_str());
                              return !now.IsNull() && now.IsEqual(placed);
                            });
}

std::vector<NamedPlace> shapes_named(const std::string& name) {
  std::vector<NamedPlace> shapes;
  for (const std::string& word : words_of(name)) {
    const TopoDS_Shape shape = DBRep::GetExisting(word.c_str());
    if (shape.IsNull()) {
      throw mistake(fmt::format("'{}'", word), "is neither an XDE document nor a shape",
                    "read a document with ReadStep or Open, or make the shape first");
    }
    shapes.push_back({word, shape});
  }
  return shapes;
}

Held held(const std::string& name) {
  const Handle(TDocStd_Document) document = find_document(name);
  return {name, document, document.IsNull() ? shapes_named(name) : std::vector<NamedPlace>()};
}

}  // namespace

Session& session_of(Draw_Interpretor& interpreter) {
  constexpr const char* kKey = "spotblue";
  if (void* const known = Tcl_GetAssocData(interpreter.Interp(), kKey, nullptr)) {
    return *static_cast<Session*>(known);
  }
  auto* const made = new Session;
  Tcl_SetAssocData(
      interpreter.Interp(), kKey,
      [](ClientData session, Tcl_Interp* /*ends*/) { delete static_cast<Session*>(session); },
      made);
  return *made;
}

const Subject& Session::look_anew(const std::string& name, const LookSettings& settings) {
  return subjects_.insert_or_assign(name, looked_at(held(name), settings)).first->second;
}

const Subject& Session::check_anew(const std::string& name, const std::optional<Job>& job,
                                   const LookBounds& bounds) {
  if (!job) {
    static_cast<void>(document_named(name));
  }
  Subject found = checked(held(name), job.value_or(bare_job(name, LengthUnit::mm)), bounds);
  if (!job && found.result.look.model.semantic_sizes.empty()) {
    throw mistake(fmt::format("'{}'", name), "has no tolerance class to be checked by",
                  "set some with sbclass, or name a job file");
  }
  return subjects_.insert_or_assign(name, std::move(found)).first->second;
}

LookBounds bounds_in(const Arguments& arguments) {
  const auto number = [&](const char* option) -> std::optional<double> {
    if (!arguments.has(option)) {
      return std::nullopt;
    }
    const std::string text = arguments.value(option);
    double value = 0.0;
    const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (trouble != std::errc() || end != text.data() + text.size()) {
      throw mistake(fmt::format("'{}'", text), fmt::format("behind {} is no number", option),
                    "write how much, as in -seconds 5 -memory 1000");
    }
    return value;
  };
  return {number("-seconds"), number("-memory")};
}

const Subject& Session::subject(const std::string& name) {
  const auto known = subjects_.find(name);
  if (known == subjects_.end() || known->second.document != find_document(name) ||
      !is_as_it_was(known->second)) {
    return look_anew(name, {});
  }
  Subject& found = known->second;
  if (found.checked && !found.document.IsNull() && sizes_of(found) != found.sizes) {
    found.checked = false;
    found.result.findings.clear();
  }
  return found;
}

const Subject& Session::document_subject(const std::string& name) {
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

FoundFeature feature_named(const Subject& subject, const std::string& id) {
  if (const auto found = find_feature(subject.result.look.model, id)) {
    return *found;
  }
  std::vector<std::string> known;
  for (const Product& product : subject.result.look.model.products) {
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
