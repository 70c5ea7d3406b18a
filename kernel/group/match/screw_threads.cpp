#include "group/match/screw_threads.hpp"

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

#include "base/disjoint_sets.hpp"
#include "spotblue/base/ascii.hpp"

namespace spotblue {
namespace {

using DrawnFeature = std::tuple<ProductId, FeatureKind, std::size_t>;

DrawnFeature drawn(const Look& look, const FeatureRef& feature) {
  return {look.model.occurrences[feature.occurrence].product, feature.kind, feature.index};
}

// Of each drawn screw and tapped hole all threads, wherever its part stands.
std::vector<std::vector<std::size_t>> threads_of_one_screw(const Look& look) {
  const std::vector<Thread>& threads = look.seats.threads;
  DisjointSets sets(threads.size());
  std::map<DrawnFeature, std::size_t> first;
  for (std::size_t i = 0; i < threads.size(); ++i) {
    for (const FeatureRef& feature : {threads[i].hole, threads[i].screw}) {
      sets.join(first.try_emplace(drawn(look, feature), i).first->second, i);
    }
  }
  std::map<std::size_t, std::vector<std::size_t>> members;
  for (std::size_t i = 0; i < threads.size(); ++i) {
    members[sets.root(i)].push_back(i);
  }
  std::vector<std::vector<std::size_t>> all;
  all.reserve(members.size());
  for (auto& [root, group] : members) {
    all.push_back(std::move(group));
  }
  return all;
}

bool may_be(const Thread& thread, const std::string& size) {
  const auto possible = possible_threads(Diameter(Length::mm(thread.hole_diameter)),
                                         Diameter(Length::mm(thread.screw_diameter)));
  return std::ranges::any_of(
      possible, [&size](const std::string& name) { return same_ascii_word(name, size); });
}

// What the job says of one thread: itself, or of a part that is set by it.
std::optional<std::string> said_of(const Thread& thread, const ThreadWant* want,
                                   const std::map<OccurrenceId, std::string>& set) {
  if (want != nullptr) {
    return want->size;
  }
  for (const OccurrenceId part : {thread.hole.occurrence, thread.screw.occurrence}) {
    const auto found = set.find(part);
    if (found != set.end() && may_be(thread, found->second)) {
      return found->second;
    }
  }
  return std::nullopt;
}

ScrewThread sized(ThreadKnown known, const std::string& size, const ThreadWant* want) {
  auto row = find_thread(size);
  const std::string name = row ? row->designation : size;
  return {known, name, std::move(row), {}, want};
}

ScrewThread as_drawn(const Thread& thread) {
  ScrewThread made = sized(ThreadKnown::usual, thread.size, nullptr);
  if (made.row && !made.row->usual) {
    made.known = ThreadKnown::rare;
  }
  return made;
}

class OneScrew {
 public:
  OneScrew(const Look& look, const std::vector<const ThreadWant*>& wants,
           const std::map<OccurrenceId, std::string>& set, const std::vector<std::size_t>& members)
      : threads_(look.seats.threads), wants_(wants) {
    for (const std::size_t i : members) {
      if (const auto size = said_of(threads_[i], wants[i], set)) {
        said_.emplace(i, sized(ThreadKnown::declared, *size, wants[i]).size);
        declared_.insert(said_.at(i));
      }
      drawn_.insert(threads_[i].size);
    }
  }

  [[nodiscard]] ScrewThread at(std::size_t i) const {
    if (declared_.empty()) {
      return drawn_.size() == 1
                 ? as_drawn(threads_[i])
                 : differing(ThreadKnown::apart, sized(ThreadKnown::apart, threads_[i].size, {}));
    }
    const auto own = said_.find(i);
    const std::string& size = own != said_.end() ? own->second : *declared_.begin();
    ScrewThread made = sized(ThreadKnown::declared, size, wants_[i]);
    if (declared_.size() > 1) {
      return differing(ThreadKnown::contradicted, std::move(made));
    }
    if (may_be(threads_[i], size)) {
      return made;
    }
    if (own != said_.end()) {
      made.known = ThreadKnown::drawn_as_other;
      return made;
    }
    return differing(ThreadKnown::contradicted, std::move(made));
  }

 private:
  [[nodiscard]] ScrewThread differing(ThreadKnown known, ScrewThread made) const {
    made.known = known;
    std::set<std::string> all = declared_;
    if (declared_.size() < 2) {
      all.insert(drawn_.begin(), drawn_.end());
    }
    made.sizes.assign(all.begin(), all.end());
    return made;
  }

  const std::vector<Thread>& threads_;
  const std::vector<const ThreadWant*>& wants_;
  std::map<std::size_t, std::string> said_;
  std::set<std::string> declared_, drawn_;
};

}  // namespace

std::vector<ScrewThread> screw_threads(const Look& look,
                                       const std::vector<const ThreadWant*>& wants,
                                       const std::map<OccurrenceId, std::string>& set) {
  std::vector<ScrewThread> all(look.seats.threads.size());
  for (const std::vector<std::size_t>& members : threads_of_one_screw(look)) {
    const OneScrew screw(look, wants, set, members);
    for (const std::size_t i : members) {
      all[i] = screw.at(i);
    }
  }
  return all;
}

}  // namespace spotblue
