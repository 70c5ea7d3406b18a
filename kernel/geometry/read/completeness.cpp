#include "geometry/read/completeness.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <unordered_map>
#include <unordered_set>
#include <utility>

namespace spotblue {
namespace {

std::string shown(const DeclaredPart& part) {
  return part.name.empty() ? fmt::format("product definition #{}", part.entity)
                           : fmt::format("product '{}'", part.name);
}

class Comparison {
 public:
  Comparison(const Arrival& arrival, const Declared& declared)
      : arrival_(arrival), declared_(declared) {
    std::unordered_set<const void*> seen;
    for (const DeclaredPart& part : declared.parts) {
      if (seen.insert(part.solid_entities.get()).second) {
        for (const int solid : *part.solid_entities) {
          owner_.emplace(solid, &part);
        }
      }
    }
  }

  std::vector<Note> missing() {
    solids();
    faces();
    parts();
    for (const int usage : arrival_.unplaced) {
      add(fmt::format("component #{}", usage), "was not placed in its assembly");
    }
    return std::move(missing_);
  }

 private:
  void add(std::string about, std::string text) {
    missing_.push_back({std::move(about), std::move(text)});
  }

  [[nodiscard]] std::string name_of(const DeclaredSolid& solid) const {
    const auto owner = owner_.find(solid.entity);
    return owner == owner_.end()
               ? fmt::format("solid #{}", solid.entity)
               : fmt::format("solid #{} of {}", solid.entity, shown(*owner->second));
  }

  void solids() {
    std::unordered_map<int, const ArrivedSolid*> arrived;
    for (const ArrivedSolid& solid : arrival_.solids) {
      arrived.emplace(solid.entity, &solid);
    }
    for (const DeclaredSolid& solid : declared_.solids) {
      const auto found = arrived.find(solid.entity);
      const bool made = found != arrived.end() && found->second->faces > 0;
      if (!made) {
        add(name_of(solid), "did not arrive");
      } else if (solid.faces > found->second->faces) {
        add(name_of(solid),
            fmt::format("arrived with {} of its {} faces", found->second->faces, solid.faces));
      } else if (!owner_.contains(solid.entity)) {
        add(name_of(solid), "belongs to no product");
      } else if (!found->second->placed) {
        add(name_of(solid), "was not placed in its product");
      }
    }
  }

  void faces() {
    for (const ArrivedFace& face : arrival_.lame_faces) {
      add(fmt::format("face #{}", face.entity),
          face.bounds < face.declared_bounds
              ? fmt::format("arrived with {} of its {} bounds", face.bounds, face.declared_bounds)
              : fmt::format("arrived with {} of its {} edges", face.edges, face.declared_edges));
    }
  }

  void parts() {
    std::unordered_map<int, std::vector<std::size_t>> bodies_of;
    for (std::size_t i = 0; i < arrival_.products.size(); ++i) {
      bodies_of[arrival_.products[i].entity].push_back(i);
    }
    std::vector<double> occurrences(arrival_.model.products.size());
    for (const Occurrence& occurrence : arrival_.model.occurrences) {
      occurrences[occurrence.product] += 1.0;
    }
    for (const DeclaredPart& part : declared_.parts) {
      const auto found = bodies_of.find(part.entity);
      if (found == bodies_of.end()) {
        add(shown(part), "did not arrive");
        continue;
      }
      const std::vector<std::size_t>& bodies = found->second;
      if (!part.has_components && static_cast<double>(bodies.size()) < part.solids) {
        add(shown(part),
            fmt::format("arrived with {} of its {:.0f} solids", bodies.size(), part.solids));
      }
      const double times = occurrences[bodies.front()];
      if (times < part.occurrences) {
        add(shown(part), fmt::format("arrived {:.0f} times of {:.0f}", times, part.occurrences));
      }
    }
  }

  const Arrival& arrival_;
  const Declared& declared_;
  std::unordered_map<int, const DeclaredPart*> owner_;
  std::vector<Note> missing_;
};

}  // namespace

std::vector<Note> missing_from(const Arrival& arrival, const Declared& declared) {
  return Comparison(arrival, declared).missing();
}

std::string summary_of(const std::vector<Note>& missing) {
  constexpr std::size_t kShown = 3;
  std::string all = fmt::format("less arrives than the file declares ({} {} missing)",
                                missing.size(), missing.size() == 1 ? "thing is" : "things are");
  for (std::size_t i = 0; i < std::min(kShown, missing.size()); ++i) {
    all += fmt::format("{} {} {}", i == 0 ? ":" : ";", missing[i].about, missing[i].text);
  }
  return all + (missing.size() > kShown ? "; ..." : "");
}

void leave_out(Note what, Model& model) {
  model.not_compared.push_back(what);
  model.notes.push_back(std::move(what));
}

void note_faults(const std::vector<Note>& faults, Model& model) {
  if (faults.empty()) {
    return;
  }
  distrust_parts(model, fmt::format("{}: {}", faults.front().about, faults.front().text));
  for (const Note& fault : faults) {
    leave_out({fault.about, fault.text + ": what is made of it is not to be trusted"}, model);
  }
}

void distrust_parts(Model& model, const std::string& why) {
  for (Product& product : model.products) {
    if (product.unsound.empty()) {
      product.unsound = why + "; which parts are made of it is not known";
    }
  }
}

}  // namespace spotblue
