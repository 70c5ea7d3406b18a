#include "geometry/part21/step_solids.hpp"

#include <fmt/format.h>

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

#include "geometry/part21/step_mapped.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

constexpr std::array<std::string_view, 3> kShellSolids{"MANIFOLD_SOLID_BREP", "BREP_WITH_VOIDS",
                                                       "FACETED_BREP"};
// Solids that are not made of shells; declared as any other, though Open CASCADE makes none of
// them.
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

int listed_faces(const StepText& text, const StepText::Entity& shell) {
  const auto faces = text.arguments(shell);
  return faces && faces->size() > 1 ? static_cast<int>(references((*faces)[1]).size()) : 0;
}

// Solids of a file; a shell that many of them share is counted once.
class Solids {
 public:
  explicit Solids(const StepText& text) : text_(text) {}

  std::optional<DeclaredSolid> at(const StepText::Entity& entity) {
    const std::string_view word = text_.keyword(entity);
    if (std::find(kOtherSolids.begin(), kOtherSolids.end(), word) != kOtherSolids.end()) {
      return DeclaredSolid{entity.id, 0, std::string(word), false};
    }
    if (!word.empty() &&
        std::find(kShellSolids.begin(), kShellSolids.end(), word) == kShellSolids.end()) {
      return std::nullopt;
    }
    if (word.empty()) {
      if (!text_.arguments(entity, "MANIFOLD_SOLID_BREP")) {
        return std::nullopt;
      }
      return DeclaredSolid{entity.id, 0, "MANIFOLD_SOLID_BREP", true};
    }
    DeclaredSolid solid{entity.id, 0, std::string(word), true};
    const auto arguments = text_.arguments(entity);
    for (std::size_t i = 1; arguments && i < arguments->size(); ++i) {
      for (const int shell : references((*arguments)[i])) {
        solid.faces += faces_of_shell(shell);
      }
    }
    return solid;
  }

 private:
  int faces_of_shell(int shell) {
    if (const auto known = faces_.find(shell); known != faces_.end()) {
      return known->second;
    }
    const StepText::Entity* entity = text_.find(shell);
    if (entity == nullptr) {
      return 0;
    }
    int faces = 0;
    if (const auto oriented = text_.arguments(*entity, "ORIENTED_CLOSED_SHELL")) {
      const auto element = oriented->size() > 2 ? reference((*oriented)[2]) : std::nullopt;
      const StepText::Entity* closed = element ? text_.find(*element) : nullptr;
      faces = closed != nullptr ? listed_faces(text_, *closed) : 0;
    } else {
      faces = listed_faces(text_, *entity);
    }
    faces_.emplace(shell, faces);
    return faces;
  }

  const StepText& text_;
  std::unordered_map<int, int> faces_;
};

// Representations, the solids among their items, and what links them.
class Representations {
 public:
  Representations(const StepText& text, const std::string& file,
                  const std::vector<DeclaredSolid>& solids)
      : text_(text), file_(file) {
    for (const DeclaredSolid& solid : solids) {
      solids_.insert(solid.entity);
    }
    links_ = linked_representations(text);
    for (const MappedUsage& usage : mapped_usages(text)) {
      placing_.insert(usage.item);
    }
  }

  // The solids of these representations and of all that are linked to them; those of one group are
  // gathered once, however many definitions have them and however often one names it.
  DefinitionSolids gather(int definition, const std::vector<int>& starts) {
    std::vector<std::size_t> groups;
    groups.reserve(starts.size());
    for (const int start : starts) {
      groups.push_back(group_of(start));
    }
    std::sort(groups.begin(), groups.end());
    groups.erase(std::unique(groups.begin(), groups.end()), groups.end());
    DefinitionSolids all;
    all.definition = definition;
    if (groups.size() == 1) {
      const Group& only = groups_[groups.front()];
      return {definition, only.solids, only.solid_entities, only.contexts};
    }
    std::vector<int> entities;
    std::vector<int> contexts;
    for (const std::size_t number : groups) {
      const Group& group = groups_[number];
      all.solids += group.solids;
      count_listed(group.solid_entities->size());
      entities.insert(entities.end(), group.solid_entities->begin(), group.solid_entities->end());
      contexts.insert(contexts.end(), group.contexts->begin(), group.contexts->end());
    }
    all.solid_entities = std::make_shared<std::vector<int>>(std::move(entities));
    all.contexts = std::make_shared<std::vector<int>>(std::move(contexts));
    return all;
  }

 private:
  using Entities = std::shared_ptr<const std::vector<int>>;
  struct Group {
    double solids = 0.0;
    Entities solid_entities, contexts;
  };

  // Lists of lists of solids grow with the square of the text where copies hold copies; 40 MB.
  // Choice of this program, no source.
  static constexpr std::size_t kMostListed = 10'000'000;
  void count_listed(std::size_t solids) {
    listed_ += solids;
    if (listed_ > kMostListed) {
      throw Error(ErrorCode::unreadable, {file_, ""},
                  fmt::format("its shapes are linked and copied so often that they name more than "
                              "{} solids",
                              kMostListed),
                  "export a part of it, or export it again");
    }
  }

  std::size_t group_of(int start) {
    if (const auto known = group_by_member_.find(start); known != group_by_member_.end()) {
      return known->second;
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
      contexts.push_back(context_of(text_, representation));
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
    return number;
  }

  // Its own and, by mapped items, those of others. A chain of mappings that comes back to itself
  // or is absurdly long counts once; Open CASCADE does not survive it.
  double solids_within(int representation, std::vector<int>& entities, int depth = 0) {
    if (const auto known = counted_.find(representation); known != counted_.end()) {
      count_listed(known->second.second.size());
      entities.insert(entities.end(), known->second.second.begin(), known->second.second.end());
      return known->second.first;
    }
    constexpr int kMostMappings = 100;
    counted_[representation] = {};  // for one that maps itself
    double solids = 0.0;
    std::vector<int> found;
    for (const int item : items_of(text_, representation)) {
      if (solids_.contains(item)) {
        solids += 1.0;
        found.push_back(item);
      } else if (const int other = placing_.contains(item) ? 0 : mapped_by(text_, item);
                 other != 0 && depth < kMostMappings) {
        solids += solids_within(other, found, depth + 1);
      }
    }
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    count_listed(found.size());
    entities.insert(entities.end(), found.begin(), found.end());
    counted_[representation] = {solids, std::move(found)};
    return solids;
  }

  const StepText& text_;
  const std::string& file_;
  std::size_t listed_ = 0;
  std::unordered_set<int> solids_;
  std::unordered_set<int> placing_;  // mapped items that place a part and are none of its own
  std::unordered_map<int, std::vector<int>> links_;
  std::vector<Group> groups_;
  std::unordered_map<int, std::size_t> group_by_member_;
  std::unordered_map<int, std::pair<double, std::vector<int>>> counted_;
};

}  // namespace

std::vector<DeclaredSolid> declared_solids(const StepText& text) {
  std::vector<DeclaredSolid> solids;
  Solids reader(text);
  for (const StepText::Entity& entity : text.entities()) {
    if (auto solid = reader.at(entity)) {
      solids.push_back(std::move(*solid));
    }
  }
  return solids;
}

std::vector<DefinitionSolids> solids_by_definition(const StepText& text, const std::string& file,
                                                   const std::vector<DeclaredSolid>& solids) {
  Representations representations(text, file, solids);
  std::map<int, std::vector<int>> shapes;
  for (const auto& [definition, representation] : shapes_of_definitions(text)) {
    shapes[definition].push_back(representation);
  }
  std::vector<DefinitionSolids> all;
  for (const auto& [definition, starts] : shapes) {
    DefinitionSolids found = representations.gather(definition, starts);
    if (found.solids > 0.0) {
      all.push_back(std::move(found));
    }
  }
  return all;
}

}  // namespace spotblue
