#include "geometry/part21/step_bare.hpp"

#include <fmt/format.h>

#include <map>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>

#include "geometry/part21/step_kinds.hpp"
#include "geometry/part21/step_mapped.hpp"
#include "geometry/part21/step_usage.hpp"

namespace spotblue {
namespace {

struct Drawn {
  bool triangles = false;
  bool curves = false;
};

class BareParts {
 public:
  BareParts(const StepText& text, const Declared& declared)
      : text_(text), links_(linked_representations(text)) {
    for (const DeclaredPart& part : declared.parts) {
      known_.insert(part.entity);
    }
    for (const OutsidePart& part : declared.outside) {
      known_.insert(part.definition);
    }
    for (const MappedUsage& usage : mapped_usages(text)) {
      assemblies_.insert(usage.assembly);
      placing_.insert(usage.item);
    }
    for (const StepText::Entity& entity : text.entities()) {
      const auto usage = text.arguments(entity, "NEXT_ASSEMBLY_USAGE_OCCURRENCE");
      if (usage && usage->size() > 3) {
        assemblies_.insert(reference((*usage)[3]).value_or(0));
      }
    }
  }

  std::vector<Note> notes() {
    std::map<int, Drawn> drawn;
    for (const auto& [definition, representation] : shapes_of_definitions(text_)) {
      if (!known_.contains(definition)) {
        add(drawn[definition], drawn_by_all(representation));
      }
    }
    std::vector<Note> notes;
    for (const auto& [definition, how] : drawn) {
      const bool curves = how.curves && !assemblies_.contains(definition);
      if (how.triangles || curves) {
        const std::string name = product_name(text_, definition);
        notes.push_back({name.empty() ? fmt::format("product definition #{}", definition) : name,
                         fmt::format("it has no solid, {} only: nothing of it is measured or set "
                                     "against other parts",
                                     how.triangles ? "triangles" : "curves")});
      }
    }
    return notes;
  }

 private:
  static void add(Drawn& sum, const Drawn& one) {
    sum.triangles = sum.triangles || one.triangles;
    sum.curves = sum.curves || one.curves;
  }

  // By all representations that are linked to it; each group is looked at once.
  Drawn drawn_by_all(int start) {
    const auto known = group_of_.find(start);
    if (known != group_of_.end()) {
      return groups_[known->second];
    }
    Drawn drawn;
    std::vector<int> open{start};
    group_of_.emplace(start, groups_.size());
    while (!open.empty()) {
      const int representation = open.back();
      open.pop_back();
      add(drawn, drawn_in(representation));
      for (const int linked : links_[representation]) {
        if (group_of_.emplace(linked, groups_.size()).second) {
          open.push_back(linked);
        }
      }
    }
    groups_.push_back(drawn);
    return drawn;
  }

  // Its own and, by mapped items, those of others; a chain that comes back to itself counts once.
  Drawn drawn_in(int representation, int depth = 0) {
    constexpr int kMostMappings = 100;
    const auto [entry, is_new] = known_drawn_.try_emplace(representation);
    if (!is_new || depth > kMostMappings) {
      return entry->second;
    }
    Drawn drawn;
    for (const int item : items_of(text_, representation)) {
      const StepText::Entity* entity = text_.find(item);
      const std::string_view word = entity != nullptr ? text_.keyword(*entity) : "$";
      drawn.triangles = drawn.triangles || is_tessellated(word) ||
                        (word.empty() && text_.arguments(*entity, "TESSELLATED_ITEM"));
      drawn.curves = drawn.curves || is_curves(word);
      const bool copies = word == "MAPPED_ITEM" && !placing_.contains(item);
      if (const int other = copies ? mapped_by(text_, item) : 0; other != 0) {
        add(drawn, drawn_in(other, depth + 1));
      }
    }
    known_drawn_[representation] = drawn;
    return drawn;
  }

  const StepText& text_;
  std::unordered_map<int, std::vector<int>> links_;
  std::unordered_set<int> known_;       // definitions that have solids or are in other files
  std::unordered_set<int> assemblies_;  // definitions that have components
  std::unordered_set<int> placing_;     // mapped items that place a part
  std::unordered_map<int, Drawn> known_drawn_;
  std::unordered_map<int, std::size_t> group_of_;  // representations that are linked
  std::vector<Drawn> groups_;
};

}  // namespace

std::vector<Note> bare_parts(const StepText& text, const Declared& declared) {
  return BareParts(text, declared).notes();
}

}  // namespace spotblue
