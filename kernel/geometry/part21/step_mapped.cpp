#include "geometry/part21/step_mapped.hpp"

#include <algorithm>
#include <optional>
#include <set>
#include <string_view>
#include <unordered_set>

namespace spotblue {
namespace {

// Name, items and context.
std::vector<std::string_view> arguments_of(const StepText& text, int representation) {
  const StepText::Entity* entity = text.find(representation);
  if (entity == nullptr) {
    return {};
  }
  auto arguments = text.arguments(*entity);
  if (!arguments) {
    arguments = text.arguments(*entity, "REPRESENTATION");
  }
  return arguments.value_or(std::vector<std::string_view>());
}

// Whether the mapped item's target is a pair of axes: operators may mirror and scale.
bool is_plain_copy(const StepText& text, const StepText::Entity& item) {
  const auto mapped = text.arguments(item, "MAPPED_ITEM");
  const auto target = mapped && mapped->size() > 2 ? reference((*mapped)[2]) : std::nullopt;
  const StepText::Entity* axes = target ? text.find(*target) : nullptr;
  return axes != nullptr && text.keyword(*axes) == "AXIS2_PLACEMENT_3D";
}

// Which product definition's shape each representation is part of; 0 where several share it.
class Owners {
 public:
  explicit Owners(const StepText& text) : links_(linked_representations(text)) {
    for (const auto& [definition, representation] : shapes_of_definitions(text)) {
      spread(definition, representation);
    }
  }

  [[nodiscard]] int of(int representation) const {
    const auto found = owner_.find(representation);
    return found == owner_.end() ? 0 : found->second;
  }
  [[nodiscard]] const std::unordered_map<int, int>& all() const { return owner_; }

 private:
  void spread(int definition, int start) {
    if (const auto known = owner_.find(start); known != owner_.end()) {
      if (known->second != definition) {
        share(start);
      }
      return;
    }
    std::vector<int> open{start};
    owner_.emplace(start, definition);
    while (!open.empty()) {
      const int representation = open.back();
      open.pop_back();
      for (const int linked : links_[representation]) {
        if (owner_.emplace(linked, definition).second) {
          open.push_back(linked);
        }
      }
    }
  }

  // All that is linked to it has no owner of its own then; once, however many share it.
  void share(int start) {
    std::vector<int> open{start};
    while (!open.empty()) {
      const int representation = open.back();
      open.pop_back();
      int& owner = owner_[representation];
      if (owner == 0) {
        continue;
      }
      owner = 0;
      open.insert(open.end(), links_[representation].begin(), links_[representation].end());
    }
  }

  std::unordered_map<int, std::vector<int>> links_;
  std::unordered_map<int, int> owner_;
};

std::set<std::pair<int, int>> stated_usages(const StepText& text) {
  std::set<std::pair<int, int>> stated;
  for (const StepText::Entity& entity : text.entities()) {
    const auto usage = text.arguments(entity, "NEXT_ASSEMBLY_USAGE_OCCURRENCE");
    if (usage && usage->size() > 4) {
      stated.emplace(reference((*usage)[3]).value_or(0), reference((*usage)[4]).value_or(0));
    }
  }
  return stated;
}

}  // namespace

std::unordered_map<int, std::vector<int>> linked_representations(const StepText& text) {
  std::unordered_map<int, std::vector<int>> links;
  std::unordered_set<int> placing;
  for (const StepText::Entity& entity : text.entities()) {
    const auto placed = text.arguments(entity, "CONTEXT_DEPENDENT_SHAPE_REPRESENTATION");
    if (placed && !placed->empty()) {
      placing.insert(reference(placed->front()).value_or(0));
    }
  }
  for (const StepText::Entity& entity : text.entities()) {
    if (placing.contains(entity.id)) {
      continue;
    }
    auto relation = text.arguments(entity, "SHAPE_REPRESENTATION_RELATIONSHIP");
    if (!relation || relation->size() < 4) {
      relation = text.arguments(entity, "REPRESENTATION_RELATIONSHIP");
    }
    if (relation && relation->size() >= 4) {
      const int a = reference((*relation)[2]).value_or(0);
      const int b = reference((*relation)[3]).value_or(0);
      links[a].push_back(b);
      links[b].push_back(a);
    }
  }
  return links;
}

RepresentationOwners representation_owners(const StepText& text) { return Owners(text).all(); }

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

std::vector<int> items_of(const StepText& text, int representation) {
  const auto arguments = arguments_of(text, representation);
  return arguments.size() > 1 ? references(arguments[1]) : std::vector<int>();
}

int context_of(const StepText& text, int representation) {
  const auto arguments = arguments_of(text, representation);
  return arguments.size() > 2 ? reference(arguments[2]).value_or(0) : 0;
}

int mapped_by(const StepText& text, int item) {
  const StepText::Entity* entity = text.find(item);
  const auto mapped = entity != nullptr ? text.arguments(*entity, "MAPPED_ITEM") : std::nullopt;
  const auto source = mapped && mapped->size() > 1 ? reference((*mapped)[1]) : std::nullopt;
  const StepText::Entity* map = source ? text.find(*source) : nullptr;
  const auto of = map != nullptr ? text.arguments(*map) : std::nullopt;
  return of && of->size() > 1 ? reference((*of)[1]).value_or(0) : 0;
}

std::vector<MappedUsage> mapped_usages(const StepText& text) {
  std::unordered_set<int> plain_copies;
  for (const StepText::Entity& entity : text.entities()) {
    if (text.keyword(entity) == "MAPPED_ITEM" && is_plain_copy(text, entity)) {
      plain_copies.insert(entity.id);
    }
  }
  std::vector<MappedUsage> usages;
  if (plain_copies.empty()) {
    return usages;
  }
  const Owners owners(text);
  const auto stated = stated_usages(text);
  for (const auto& [representation, assembly] : owners.all()) {
    if (assembly == 0) {
      continue;
    }
    for (const int item : items_of(text, representation)) {
      const int component = plain_copies.contains(item) ? owners.of(mapped_by(text, item)) : 0;
      if (component != 0 && component != assembly && !stated.contains({assembly, component})) {
        usages.push_back({item, assembly, component});
      }
    }
  }
  std::sort(usages.begin(), usages.end(),
            [](const MappedUsage& a, const MappedUsage& b) { return a.item < b.item; });
  return usages;
}

}  // namespace spotblue
