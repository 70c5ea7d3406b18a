#include "plugin/harness/session.hpp"

#include <fmt/format.h>

#include <DBRep.hxx>
#include <DDocStd.hxx>
#include <algorithm>
#include <charconv>
#include <map>
#include <optional>
#include <system_error>

#include "plugin/harness/command.hpp"
#include "plugin/harness/tcl_value.hpp"
#include "spotblue/base/nearest.hpp"

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

}  // namespace

Subject& look_anew(const std::string& name, const LookSettings& settings) {
  const Handle(TDocStd_Document) document = find_document(name);
  subjects().insert_or_assign(name, document.IsNull()
                                        ? looked_at_shapes(name, shapes_named(name), settings)
                                        : looked_at_document(name, document, settings));
  return subjects().at(name);
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
