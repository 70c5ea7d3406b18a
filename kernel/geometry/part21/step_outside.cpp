#include "geometry/part21/step_outside.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string_view>
#include <unordered_map>
#include <utility>

#include "geometry/part21/step_mapped.hpp"
#include "spotblue/base/ascii.hpp"

namespace spotblue {
namespace {

bool names_step_file(const std::string& name) {
  const std::string lower = ascii_lower(name);
  return lower.ends_with(".stp") || lower.ends_with(".step") || lower.ends_with(".p21") ||
         lower.ends_with(".stpz");
}

// The first of an entity's first two arguments that names a STEP file; empty for none.
std::string step_file_in(const std::vector<std::string_view>& arguments) {
  for (std::size_t i = 0; i < std::min<std::size_t>(2, arguments.size()); ++i) {
    std::string name = quoted(arguments[i]);
    if (names_step_file(name)) {
      return name;
    }
  }
  return {};
}

// Documents, and what says of which product definition they are:
//   DOCUMENT_FILE <- PRODUCT_DEFINITION_WITH_ASSOCIATED_DOCUMENTS, the part's own, or the
//   document's
//     -> its formation <- DOCUMENT_PRODUCT_EQUIVALENCE -> DOCUMENT
//   DOCUMENT or DOCUMENT_FILE <- APPLIED_DOCUMENT_REFERENCE -> the part's definition or formation
//   DOCUMENT_FILE <- PROPERTY_DEFINITION <- its representation, that of the part
class Documents {
 public:
  explicit Documents(const StepText& text) : text_(text) {
    for (const StepText::Entity& entity : text.entities()) {
      if (const auto document = text.arguments(entity, "DOCUMENT_FILE")) {
        files_[entity.id] = step_file_in(*document);
      }
    }
    if (files_.empty()) {
      return;
    }
    for (const StepText::Entity& entity : text.entities()) {
      if (const auto arguments = text_.arguments(entity)) {
        read(entity.id, text.keyword(entity), *arguments);
      }
    }
    for (const auto& [definition, representation] : shapes_of_definitions(text)) {
      definition_of_shape_.emplace(representation, definition);
    }
  }

  [[nodiscard]] std::vector<OutsidePart> parts() const {
    std::set<std::pair<std::string, int>> all;
    std::set<std::string> placed;
    for (const auto& [document, file] : files_) {
      for (const int definition : file.empty() ? std::set<int>() : definitions_of(document)) {
        all.emplace(file, definition);
        placed.insert(file);
      }
    }
    for (const auto& [document, file] : files_) {
      if (!file.empty() && !placed.contains(file)) {
        all.emplace(file, 0);
      }
    }
    std::vector<OutsidePart> parts;
    parts.reserve(all.size());
    for (const auto& [file, definition] : all) {
      parts.push_back({file, definition});
    }
    return parts;
  }

 private:
  using Arguments = std::vector<std::string_view>;
  using Links = std::unordered_map<int, std::vector<int>>;

  static int one(const Arguments& arguments, std::size_t at) {
    return at < arguments.size() ? reference(arguments[at]).value_or(0) : 0;
  }
  static std::vector<int> list(const Arguments& arguments, std::size_t at) {
    return at < arguments.size() ? references(arguments[at]) : std::vector<int>();
  }

  void read(int id, std::string_view word, const Arguments& arguments) {
    if (word == "APPLIED_EXTERNAL_IDENTIFICATION_ASSIGNMENT") {
      const std::string file = step_file_in(arguments);
      for (const int document : list(arguments, 3)) {
        const auto found = files_.find(document);
        if (found != files_.end() && !file.empty()) {
          found->second = file;
        }
      }
    } else if (word == "PRODUCT_DEFINITION_WITH_ASSOCIATED_DOCUMENTS") {
      formation_of_[id] = one(arguments, 2);
      definitions_of_formation_[one(arguments, 2)].push_back(id);
      for (const int document : list(arguments, 4)) {
        listed_by_[document].push_back(id);
      }
    } else if (word == "PRODUCT_DEFINITION") {
      formation_of_[id] = one(arguments, 2);
      definitions_of_formation_[one(arguments, 2)].push_back(id);
    } else if (word == "DOCUMENT_PRODUCT_EQUIVALENCE") {
      documents_of_formation_[one(arguments, 3)].push_back(one(arguments, 2));
    } else if (word == "APPLIED_DOCUMENT_REFERENCE" ||
               word == "CC_DESIGN_SPECIFICATION_REFERENCE") {
      for (std::size_t at = 1; at < arguments.size(); ++at) {
        for (const int item : list(arguments, at)) {
          referred_by_[one(arguments, 0)].push_back(item);
        }
      }
    } else if (word == "PROPERTY_DEFINITION") {
      properties_of_[one(arguments, 2)].push_back(id);
    } else if (word == "SHAPE_DEFINITION_REPRESENTATION" ||
               word == "PROPERTY_DEFINITION_REPRESENTATION") {
      representation_of_[one(arguments, 0)] = one(arguments, 1);
    }
  }

  static std::vector<int> linked(const Links& links, int id) {
    const auto found = links.find(id);
    return found == links.end() ? std::vector<int>() : found->second;
  }

  void add_referred(int document, std::set<int>& found) const {
    for (const int item : linked(referred_by_, document)) {
      if (formation_of_.contains(item)) {
        found.insert(item);
      }
      for (const int definition : linked(definitions_of_formation_, item)) {
        found.insert(definition);
      }
    }
  }

  [[nodiscard]] std::set<int> definitions_of(int document) const {
    std::set<int> found;
    add_referred(document, found);
    for (const int definition : linked(listed_by_, document)) {
      const std::vector<int> documents =
          linked(documents_of_formation_, formation_of_.at(definition));
      if (documents.empty()) {
        found.insert(definition);
      }
      for (const int same : documents) {
        add_referred(same, found);
      }
    }
    for (const int property : linked(properties_of_, document)) {
      const auto representation = representation_of_.find(property);
      if (representation != representation_of_.end()) {
        const auto definition = definition_of_shape_.find(representation->second);
        if (definition != definition_of_shape_.end()) {
          found.insert(definition->second);
        }
      }
    }
    return found;
  }

  const StepText& text_;
  std::map<int, std::string> files_;  // of each document; empty for no STEP file
  std::unordered_map<int, int> formation_of_, representation_of_, definition_of_shape_;
  Links definitions_of_formation_, documents_of_formation_, listed_by_, referred_by_,
      properties_of_;
};

}  // namespace

std::vector<OutsidePart> outside_parts(const StepText& text) { return Documents(text).parts(); }

}  // namespace spotblue
