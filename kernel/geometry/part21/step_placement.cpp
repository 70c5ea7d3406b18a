#include "geometry/part21/step_placement.hpp"

#include <fmt/format.h>

#include <optional>
#include <set>
#include <string_view>
#include <unordered_set>
#include <utility>

#include "geometry/part21/step_usage.hpp"

namespace spotblue {
namespace {

using Entity = StepText::Entity;

constexpr std::string_view kUsage = "NEXT_ASSEMBLY_USAGE_OCCURRENCE";
constexpr std::string_view kAxes = "AXIS2_PLACEMENT_3D";
constexpr std::string_view kOperator = "CARTESIAN_TRANSFORMATION_OPERATOR_3D";

class Reader {
 public:
  Reader(const StepText& text, const RepresentationOwners& owners) : text_(text), owners_(owners) {}

  Placements read() {
    for (const Entity& entity : text_.entities()) {
      const auto placed = text_.arguments(entity, "CONTEXT_DEPENDENT_SHAPE_REPRESENTATION");
      if (placed && placed->size() > 1) {
        look_at_usage((*placed)[0], (*placed)[1]);
      }
    }
    look_at_copies();
    for (const Entity& entity : text_.entities()) {
      if (text_.keyword(entity) == kUsage && !placed_.contains(entity.id)) {
        found_.unplaced.push_back(
            {shown(entity), "the file does not place it: it stands at its assembly's origin"});
      }
    }
    return std::move(found_);
  }

 private:
  [[nodiscard]] const Entity* entity_of(std::string_view argument) const {
    const auto id = reference(argument);
    return id ? text_.find(*id) : nullptr;
  }

  // The entity that an argument of an entity refers to, or null.
  [[nodiscard]] const Entity* follow(const Entity* entity, std::string_view keyword,
                                     std::size_t argument) const {
    const auto arguments = entity != nullptr ? text_.arguments(*entity, keyword) : std::nullopt;
    return arguments && arguments->size() > argument ? entity_of((*arguments)[argument]) : nullptr;
  }

  // Without reading what it holds, which many may share.
  [[nodiscard]] bool is_a(std::string_view keyword, const Entity* entity) const {
    const std::string_view own = entity != nullptr ? text_.keyword(*entity) : "$";
    return own == keyword || (own.empty() && text_.arguments(*entity, keyword));
  }

  [[nodiscard]] std::string shown(const Entity& usage) const {
    const Entity* component = follow(&usage, kUsage, 4);
    const std::string name = component != nullptr ? product_name(text_, component->id) : "";
    return name.empty() ? fmt::format("component #{}", usage.id)
                        : fmt::format("component '{}' (#{})", name, usage.id);
  }

  [[nodiscard]] std::string shown_part(int definition) const {
    const std::string name = product_name(text_, definition);
    return name.empty() ? fmt::format("#{}", definition) : fmt::format("'{}'", name);
  }

  void look_at_usage(std::string_view relation_argument, std::string_view shape_argument) {
    const Entity* relation = entity_of(relation_argument);
    const Entity* usage = follow(entity_of(shape_argument), "PRODUCT_DEFINITION_SHAPE", 2);
    const Entity* transformation =
        follow(relation, "REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION", 0);
    if (usage == nullptr || transformation == nullptr) {
      return;
    }
    const std::string why = !placed_.insert(usage->id).second
                                ? "is placed more than once: which place is meant is not known"
                                : why_not(*usage, *relation, *transformation);
    if (!why.empty()) {
      found_.faults.push_back({shown(*usage), why});
    }
  }

  // Why it can not be placed as the file says; empty where it can.
  [[nodiscard]] std::string why_not(const Entity& usage, const Entity& relation,
                                    const Entity& transformation) const {
    if (!text_.arguments(transformation, "ITEM_DEFINED_TRANSFORMATION")) {
      return fmt::format(
          "is placed by #{}, which is no pair of axis placements: mirrored and scaled copies must "
          "be parts of their own",
          transformation.id);
    }
    for (const std::size_t item : {2, 3}) {
      if (!is_a(kAxes, follow(&transformation, "ITEM_DEFINED_TRANSFORMATION", item))) {
        return fmt::format("is placed by #{}, whose items are not both axis placements",
                           transformation.id);
      }
    }
    const auto used = text_.arguments(usage, kUsage);
    const auto linked = text_.arguments(relation, "REPRESENTATION_RELATIONSHIP");
    if (!used || used->size() < 5 || !linked || linked->size() < 4) {
      return {};
    }
    for (const std::size_t side : {2, 3}) {
      const auto owner = owners_.find(reference((*linked)[side]).value_or(0));
      if (owner != owners_.end() && owner->second != 0 &&
          owner->second != reference((*used)[3]).value_or(0) &&
          owner->second != reference((*used)[4]).value_or(0)) {
        return fmt::format(
            "is placed by the shape of product {}, which its usage does not name: which of the two "
            "is meant is not known",
            shown_part(owner->second));
      }
    }
    return {};
  }

  // Copies by mapped items within products.
  void look_at_copies() {
    for (const auto& [representation, owner] : owners_) {
      for (const int item : items_of(text_, representation)) {
        const Entity* copy = text_.find(item);
        if (copy == nullptr || !text_.arguments(*copy, "MAPPED_ITEM")) {
          continue;
        }
        const Entity* target = follow(copy, "MAPPED_ITEM", 2);
        if (!is_a(kOperator, target) && !is_a(kAxes, target)) {
          copies_.insert(item);
        }
      }
    }
    for (const int item : copies_) {
      found_.faults.push_back(
          {fmt::format("#{}, MAPPED_ITEM", item), "its target is no axis placement"});
    }
  }

  const StepText& text_;
  const RepresentationOwners& owners_;
  std::unordered_set<int> placed_;
  std::set<int> copies_;  // with no place of their own; in the order of their numbers
  Placements found_;
};

}  // namespace

Placements read_placements(const StepText& text, const RepresentationOwners& owners) {
  return Reader(text, owners).read();
}

}  // namespace spotblue
