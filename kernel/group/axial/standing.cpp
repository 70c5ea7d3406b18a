#include "group/axial/standing.hpp"

#include <algorithm>
#include <tuple>

namespace spotblue {
namespace {

std::vector<double> volumes_of(const Model& model, const Groups& groups) {
  std::vector<double> volumes;
  for (std::size_t i = 0; i < model.occurrences.size(); ++i) {
    const std::size_t group = groups.moves_with[i];
    volumes.resize(std::max(volumes.size(), group + 1), 0.0);
    volumes[group] += model.products[model.occurrences[i].product].volume;
  }
  return volumes;
}

}  // namespace

Standing::Standing(const DeclaredJob& declared, const Groups& groups, const Turns& turns)
    : volumes_(volumes_of(declared.look->model, groups)) {
  for (std::size_t part = 0; part < turns.of.size(); ++part) {
    if (turns.of[part]) {
      turning_.insert(groups.moves_with[part]);
    }
  }
  for (std::size_t group = 1; group < volumes_.size(); ++group) {
    heaviest_ = stands_before(heaviest_, group) ? group : heaviest_;
  }
  for (const EndPlayWant& want : declared.job->end_play) {
    for (const OccurrenceId part :
         declared.names.part(want.of, {"wants", "of", want.line}).occurrences) {
      wanted_.insert(groups.moves_with.at(part));
    }
  }
  wanted_.erase(heaviest_);
}

// Whether the second is the likelier of the two to stand still; of two alike the first is.
bool Standing::stands_before(std::size_t a, std::size_t b) const {
  const auto rank = [this](std::size_t group) {
    return std::tuple(turning_.contains(group) ? 0 : 1, wanted_.contains(group) ? 0 : 1,
                      volumes_[group]);
  };
  return rank(a) < rank(b);
}

std::size_t Standing::of(const std::set<std::size_t>& groups) const {
  return *std::max_element(groups.begin(), groups.end(),
                           [this](std::size_t a, std::size_t b) { return stands_before(a, b); });
}

}  // namespace spotblue
