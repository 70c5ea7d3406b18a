#include "geometry/part21/step_placement.hpp"

#include <fmt/format.h>

#include <unordered_set>

#include "geometry/part21/step_usage.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

// The entity that an argument of an entity refers to, or null.
const StepText::Entity* follow(const StepText& text, const StepText::Entity* entity,
                               std::string_view keyword, std::size_t argument) {
  const auto arguments = entity != nullptr ? text.arguments(*entity, keyword) : std::nullopt;
  const auto id =
      arguments && arguments->size() > argument ? reference((*arguments)[argument]) : std::nullopt;
  return id ? text.find(*id) : nullptr;
}

constexpr std::string_view kUsage = "NEXT_ASSEMBLY_USAGE_OCCURRENCE";

std::string component_of(const StepText& text, const StepText::Entity& usage) {
  const StepText::Entity* component = follow(text, &usage, kUsage, 4);
  const std::string name = component != nullptr ? product_name(text, component->id) : "";
  return name.empty() ? fmt::format("component #{}", usage.id)
                      : fmt::format("component '{}' (#{})", name, usage.id);
}

}  // namespace

std::vector<Note> check_placements(const StepText& text, const std::string& file) {
  constexpr std::string_view kPlacing = "CONTEXT_DEPENDENT_SHAPE_REPRESENTATION";
  std::unordered_set<int> placed;
  for (const StepText::Entity& entity : text.entities()) {
    const StepText::Entity* relation = follow(text, &entity, kPlacing, 0);
    const StepText::Entity* shape = follow(text, &entity, kPlacing, 1);
    const StepText::Entity* usage = follow(text, shape, "PRODUCT_DEFINITION_SHAPE", 2);
    if (usage == nullptr) {
      continue;
    }
    const StepText::Entity* transformation =
        follow(text, relation, "REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION", 0);
    if (transformation != nullptr &&
        !text.arguments(*transformation, "ITEM_DEFINED_TRANSFORMATION")) {
      throw Error(ErrorCode::unreadable, {file, fmt::format("line {}", text.line_of(entity))},
                  fmt::format("{} is placed by #{}, which is no pair of axis placements",
                              component_of(text, *usage), transformation->id),
                  "export mirrored and scaled copies as parts of their own");
    }
    if (transformation != nullptr) {
      placed.insert(usage->id);
    }
  }
  std::vector<Note> notes;
  for (const StepText::Entity& entity : text.entities()) {
    if (text.keyword(entity) == kUsage && !placed.contains(entity.id)) {
      notes.push_back({component_of(text, entity),
                       "the file does not place it: it stands at its assembly's origin"});
    }
  }
  return notes;
}

}  // namespace spotblue
