#include "geometry/step_solids.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <map>
#include <memory>
#include <optional>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <utility>

namespace spotblue {
namespace {

constexpr std::array<std::string_view, 3> kShellSolids{"MANIFOLD_SOLID_BREP", "BREP_WITH_VOIDS",
                                                       "FACETED_BREP"};
// Solids that are not made of shells; declared as any other, though the kernel makes none of them.
constexpr std::array<std::string_view, 15> kOtherSolids{"CSG_SOLID",
                                                        "EXTRUDED_AREA_SOLID",
                                                        "REVOLVED_AREA_SOLID",
                                                        "EXTRUDED_FACE_SOLID",
                                                        "REVOLVED_FACE_SOLID",
                                                        "SWEPT_DISK_SOLID",
                                                        "SOLID_REPLICA",
                                                        "HALF_SPACE_SOLID",
                                                        "BLOCK",
                                                        "SPHERE",
                                                        "TORUS",
                                                        "RIGHT_CIRCULAR_CYLINDER",
                                                        "RIGHT_CIRCULAR_CONE",
                                                        "RIGHT_ANGULAR_WEDGE",
                                                        "BOOLEAN_RESULT"};

int faces_of_shell(const StepText& text, int shell) {
  const StepText::Entity* entity = text.find(shell);
  if (entity == nullptr) {
    return 0;
  }
  if (const auto oriented = text.arguments(*entity, "ORIENTED_CLOSED_SHELL")) {
    const auto element = oriented->size() > 2 ? reference((*oriented)[2]) : std::nullopt;
    const StepText::Entity* closed = element ? text.find(*element) : nullptr;
    const auto faces = closed != nullptr ? text.arguments(*closed) : std::nullopt;
    return faces && faces->size() > 1 ? static_cast<int>(references((*faces)[1]).size()) : 0;
  }
  const auto faces = text.arguments(*entity);
  return faces && faces->size() > 1 ? static_cast<int>(references((*faces)[1]).size()) : 0;
}

std::optional<DeclaredSolid> solid_at(const StepText& text, const StepText::Entity& entity) {
  const std::string_view word = text.keyword(entity);
  if (std::find(kOtherSolids.begin(), kOtherSolids.end(), word) != kOtherSolids.end()) {
    return DeclaredSolid{entity.id, 0, std::string(word)};
  }
  if (!word.empty() &&
      std::find(kShellSolids.begin(), kShellSolids.end(), word) == kShellSolids.end()) {
    return std::nullopt;
  }
  if (word.empty()) {
    if (!text.arguments(entity, "MANIFOLD_SOLID_BREP")) {
      return std::nullopt;
    }
    return DeclaredSolid{entity.id, 0, "MANIFOLD_SOLID_BREP"};
  }
  DeclaredSolid solid{entity.id, 0, std::string(word)};
  const auto arguments = text.arguments(entity);
  for (std::size_t i = 1; arguments && i < arguments->size(); ++i) {
    for (const int shell : references((*arguments)[i])) {
      solid.faces += faces_of_shell(text, shell);
    }
  }
  return solid;
}

// Representations, the solids among their items, and what links them.
class Representations {
 public:
  Representations(const StepText& text, const std::vector<DeclaredSolid>& solids) : text_(text) {
    for (const DeclaredSolid& solid : solids) {
      solids_.insert(solid.entity);
    }
    find_links();
  }

  // Adds the solids of a representation and of all that are linked to it; those of one group are
  // gathered once, however many definitions have them.
  void gather(int start, DefinitionSolids& into) {
    const Group& group = group_of(start);
    into.solids += group.solids;
    into.solid_entities = joined(into.solid_entities, group.solid_entities);
    into.contexts = joined(into.contexts, group.contexts);
  }

 private:
  using Entities = std::shared_ptr<const std::vector<int>>;
  struct Group {
    double solids = 0.0;
    Entities solid_entities, contexts;
  };

  // A definition seldom has more than one group.
  static Entities joined(const Entities& a, const Entities& b) {
    if (a == nullptr || a == b) {
      return b;
    }
    auto both = std::make_shared<std::vector<int>>(*a);
    both->insert(both->end(), b->begin(), b->end());
    return both;
  }

  const Group& group_of(int start) {
    if (const auto known = group_by_member_.find(start); known != group_by_member_.end()) {
      return groups_[known->second];
    }
    const std::size_t number = groups_.size();
    group_by_member_.emplace(start, number);
    double solids = 0.0;
    std::vector<int> entities;
    std::vector<int> contexts;
    std::vector<int> open{start};
    while (!open.empty()) {
      const int representation = open.back();
      open.pop_back();
      solids += solids_within(representation, entities);
      contexts.push_back(context_of(representation));
      for (const int linked : links_[representation]) {
        if (group_by_member_.emplace(linked, number).second) {
          open.push_back(linked);
        }
      }
    }
    std::sort(contexts.begin(), contexts.end());
    contexts.erase(std::unique(contexts.begin(), contexts.end()), contexts.end());
    groups_.push_back({solids, std::make_shared<std::vector<int>>(std::move(entities)),
                       std::make_shared<std::vector<int>>(std::move(contexts))});
    return groups_.back();
  }

  // Relations of two representations of one product; those that place a component are named by a
  // context-dependent representation and link two products.
  void find_links() {
    std::unordered_set<int> placing;
    for (const StepText::Entity& entity : text_.entities()) {
      const auto placed = text_.arguments(entity, "CONTEXT_DEPENDENT_SHAPE_REPRESENTATION");
      if (placed && !placed->empty()) {
        placing.insert(reference(placed->front()).value_or(0));
      }
    }
    for (const StepText::Entity& entity : text_.entities()) {
      if (placing.contains(entity.id)) {
        continue;
      }
      auto relation = text_.arguments(entity, "SHAPE_REPRESENTATION_RELATIONSHIP");
      if (!relation || relation->size() < 4) {
        relation = text_.arguments(entity, "REPRESENTATION_RELATIONSHIP");
      }
      if (relation && relation->size() >= 4) {
        const int a = reference((*relation)[2]).value_or(0);
        const int b = reference((*relation)[3]).value_or(0);
        links_[a].push_back(b);
        links_[b].push_back(a);
      }
    }
  }

  // Name, items and context.
  [[nodiscard]] std::vector<std::string_view> arguments_of(int representation) const {
    const StepText::Entity* entity = text_.find(representation);
    if (entity == nullptr) {
      return {};
    }
    auto arguments = text_.arguments(*entity);
    if (!arguments) {
      arguments = text_.arguments(*entity, "REPRESENTATION");
    }
    return arguments.value_or(std::vector<std::string_view>());
  }

  [[nodiscard]] std::vector<int> items_of(int representation) const {
    const auto arguments = arguments_of(representation);
    return arguments.size() > 1 ? references(arguments[1]) : std::vector<int>();
  }

  [[nodiscard]] int context_of(int representation) const {
    const auto arguments = arguments_of(representation);
    return arguments.size() > 2 ? reference(arguments[2]).value_or(0) : 0;
  }

  // The representation that a mapped item copies; 0 for other items.
  [[nodiscard]] int mapped_by(int item) const {
    const StepText::Entity* entity = text_.find(item);
    const auto mapped = entity != nullptr ? text_.arguments(*entity, "MAPPED_ITEM") : std::nullopt;
    const auto source = mapped && mapped->size() > 1 ? reference((*mapped)[1]) : std::nullopt;
    const StepText::Entity* map = source ? text_.find(*source) : nullptr;
    const auto of = map != nullptr ? text_.arguments(*map) : std::nullopt;
    return of && of->size() > 1 ? reference((*of)[1]).value_or(0) : 0;
  }

  // Its own and, by mapped items, those of others. A chain of mappings that comes back to itself
  // or is absurdly long counts once; the kernel does not survive it.
  double solids_within(int representation, std::vector<int>& entities, int depth = 0) {
    if (const auto known = counted_.find(representation); known != counted_.end()) {
      entities.insert(entities.end(), known->second.second.begin(), known->second.second.end());
      return known->second.first;
    }
    constexpr int kMostMappings = 100;
    counted_[representation] = {};  // for one that maps itself
    double solids = 0.0;
    std::vector<int> found;
    for (const int item : items_of(representation)) {
      if (solids_.contains(item)) {
        solids += 1.0;
        found.push_back(item);
      } else if (const int other = mapped_by(item); other != 0 && depth < kMostMappings) {
        solids += solids_within(other, found, depth + 1);
      }
    }
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    entities.insert(entities.end(), found.begin(), found.end());
    counted_[representation] = {solids, std::move(found)};
    return solids;
  }

  const StepText& text_;
  std::unordered_set<int> solids_;
  std::unordered_map<int, std::vector<int>> links_;
  std::vector<Group> groups_;
  std::unordered_map<int, std::size_t> group_by_member_;
  std::unordered_map<int, std::pair<double, std::vector<int>>> counted_;
};

// Product definitions and the representations of their shapes.
std::vector<std::pair<int, int>> shapes_of_definitions(const StepText& text) {
  std::vector<std::pair<int, int>> shapes;
  for (const StepText::Entity& entity : text.entities()) {
    const auto link = text.arguments(entity, "SHAPE_DEFINITION_REPRESENTATION");
    const auto property = link && link->size() > 1 ? reference((*link)[0]) : std::nullopt;
    const int representation = link && link->size() > 1 ? reference((*link)[1]).value_or(0) : 0;
    const StepText::Entity* shape = property ? text.find(*property) : nullptr;
    const auto of =
        shape != nullptr ? text.arguments(*shape, "PRODUCT_DEFINITION_SHAPE") : std::nullopt;
    const auto definition = of && of->size() > 2 ? reference((*of)[2]) : std::nullopt;
    const StepText::Entity* defined = definition ? text.find(*definition) : nullptr;
    if (defined != nullptr && representation != 0 &&
        text.keyword(*defined).starts_with("PRODUCT_DEFINITION")) {
      shapes.emplace_back(*definition, representation);
    }
  }
  return shapes;
}

}  // namespace

std::vector<DeclaredSolid> declared_solids(const StepText& text) {
  std::vector<DeclaredSolid> solids;
  for (const StepText::Entity& entity : text.entities()) {
    if (auto solid = solid_at(text, entity)) {
      solids.push_back(std::move(*solid));
    }
  }
  return solids;
}

std::vector<DefinitionSolids> solids_by_definition(const StepText& text,
                                                   const std::vector<DeclaredSolid>& solids) {
  Representations representations(text, solids);
  std::map<int, DefinitionSolids> by_definition;
  for (const auto& [definition, representation] : shapes_of_definitions(text)) {
    DefinitionSolids& found = by_definition[definition];
    found.definition = definition;
    representations.gather(representation, found);
  }
  std::vector<DefinitionSolids> all;
  for (auto& [id, found] : by_definition) {
    if (found.solids > 0.0) {
      all.push_back(std::move(found));
    }
  }
  return all;
}

}  // namespace spotblue
