#include "group/match/pair_book.hpp"

#include <algorithm>

namespace spotblue {
namespace {

int narrowness_of(Meant meant) { return static_cast<int>(meant); }

constexpr int kFeatureNarrowness = static_cast<int>(Meant::occurrence) + 1;

}  // namespace

Subject subject_of(const FeatureRef& feature) {
  return {feature.occurrence, feature.kind, feature.index};
}

Subject subject_of(OccurrenceId occurrence) { return {occurrence, std::nullopt, 0}; }

Subjects subjects_of(const NamedFeature& named) {
  Subjects subjects;
  for (const FeatureRef& feature : named.refs) {
    subjects.all.push_back(subject_of(feature));
  }
  subjects.narrowness = kFeatureNarrowness + narrowness_of(named.meant);
  return subjects;
}

Subjects subjects_of(const NamedPart& named) {
  Subjects subjects;
  for (const OccurrenceId occurrence : named.occurrences) {
    subjects.all.push_back(subject_of(occurrence));
  }
  subjects.narrowness = narrowness_of(named.meant);
  return subjects;
}

void PairBook::add(const Subjects& first, const Subjects& second) {
  for (const Subject& subject : first.all) {
    by_first_[subject].push_back(pairs_.size());
  }
  pairs_.push_back({{second.all.begin(), second.all.end()}, first.narrowness + second.narrowness});
}

std::vector<std::size_t> PairBook::search(const std::vector<Subject>& first,
                                          const std::vector<Subject>& second) const {
  std::vector<std::size_t> found;
  for (const Subject& subject : first) {
    const auto entries = by_first_.find(subject);
    if (entries == by_first_.end()) {
      continue;
    }
    for (const std::size_t number : entries->second) {
      const std::set<Subject>& others = pairs_[number].second;
      if (std::any_of(second.begin(), second.end(),
                      [&others](const Subject& other) { return others.count(other) > 0; })) {
        found.push_back(number);
      }
    }
  }
  return found;
}

std::vector<std::size_t> PairBook::narrowest(const std::vector<Subject>& first,
                                             const std::vector<Subject>& second) const {
  std::vector<std::size_t> found = search(first, second);
  if (order_ == Order::either) {
    const std::vector<std::size_t> turned = search(second, first);
    found.insert(found.end(), turned.begin(), turned.end());
  }
  std::sort(found.begin(), found.end());
  found.erase(std::unique(found.begin(), found.end()), found.end());
  int most = 0;
  for (const std::size_t number : found) {
    most = std::max(most, pairs_[number].narrowness);
  }
  found.erase(
      std::remove_if(found.begin(), found.end(),
                     [this, most](std::size_t number) { return pairs_[number].narrowness < most; }),
      found.end());
  return found;
}

std::vector<std::size_t> PairBook::find(const FeatureRef& first, const FeatureRef& second) const {
  return narrowest({subject_of(first), subject_of(first.occurrence)},
                   {subject_of(second), subject_of(second.occurrence)});
}

std::vector<std::size_t> PairBook::find(OccurrenceId first, OccurrenceId second) const {
  return narrowest({subject_of(first)}, {subject_of(second)});
}

}  // namespace spotblue
