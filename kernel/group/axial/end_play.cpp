#include "group/axial/end_play.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <set>
#include <tuple>
#include <utility>

#include "group/turning/turns.hpp"

namespace spotblue {
namespace {

std::size_t count_of(const std::vector<std::size_t>& groups) {
  return groups.empty() ? 0 : *std::max_element(groups.begin(), groups.end()) + 1;
}

std::vector<double> volumes_of(const Model& model, const Groups& groups) {
  std::vector<double> volumes(count_of(groups.moves_with), 0.0);
  for (std::size_t i = 0; i < model.occurrences.size(); ++i) {
    volumes[groups.moves_with[i]] += model.products[model.occurrences[i].product].volume;
  }
  return volumes;
}

// What a chain of stops costs: how far the group can go before it closes; gaps that overlap count
// as closed and only choose between chains that are alike otherwise.
using Cost = std::pair<double, double>;

// For each group on a line the chain of stops that ends at the ground first.
class Chains {
 public:
  // `moving` is the side of a stop that moves, `standing` the one that stops it.
  Chains(const std::vector<AxialStop>& stops, const Groups& groups, std::size_t ground,
         FeatureRef AxialStop::*moving, FeatureRef AxialStop::*standing)
      : groups_(groups), ground_(ground), moving_(moving), standing_(standing) {
    std::map<std::size_t, std::vector<const AxialStop*>> stops_at;  // by the standing group
    for (const AxialStop& stop : stops) {
      stops_at[group_of(stop.*standing_)].push_back(&stop);
    }
    std::set<std::pair<Cost, std::size_t>> open{{Cost{}, ground}};
    best_[ground] = {};
    std::set<std::size_t> settled;
    while (!open.empty()) {
      const auto [cost, group] = *open.begin();
      open.erase(open.begin());
      settled.insert(group);
      for (const AxialStop* stop : stops_at[group]) {
        const std::size_t from = group_of(stop->*moving_);
        const Cost further{cost.first + std::max(stop->gap, 0.0), cost.second + stop->gap};
        const auto [known, fresh] = best_.try_emplace(from, Best{further, stop});
        if (settled.contains(from) || (!fresh && further >= known->second.cost)) {
          continue;
        }
        open.erase({known->second.cost, from});
        known->second = {further, stop};
        open.emplace(further, from);
      }
    }
  }

  // Empty where nothing stops the group.
  [[nodiscard]] std::vector<AxialStop> of(std::size_t group) const {
    std::vector<AxialStop> chain;
    while (group != ground_) {
      const auto best = best_.find(group);
      if (best == best_.end()) {
        return {};
      }
      chain.push_back(*best->second.stop);
      group = group_of(chain.back().*standing_);
    }
    return chain;
  }

 private:
  struct Best {
    Cost cost;
    const AxialStop* stop = nullptr;
  };
  [[nodiscard]] std::size_t group_of(const FeatureRef& face) const {
    return groups_.moves_with[face.occurrence];
  }

  const Groups& groups_;
  std::size_t ground_;
  FeatureRef AxialStop::*moving_;
  FeatureRef AxialStop::*standing_;
  std::map<std::size_t, Best> best_;
};

// Collects over all lines; of one group and direction the play that is closed first stays.
class Collector {
 public:
  Collector(const DeclaredJob& declared, const Groups& groups, const Turns& turns,
            const PartLengths& lengths)
      : model_(declared.look->model),
        lines_(declared.look->seats.centre_lines),
        groups_(groups),
        volumes_(volumes_of(model_, groups)),
        paths_(declared, groups, lengths) {
    for (std::size_t part = 0; part < turns.of.size(); ++part) {
      if (turns.of[part]) {
        turning_.insert(groups.moves_with[part]);
      }
    }
    for (std::size_t group = 1; group < volumes_.size(); ++group) {
      heaviest_ = stands_before(heaviest_, group) ? group : heaviest_;
    }
    for (const EndPlayWant& want : declared.job->end_play) {
      const Entry entry{"wants", "of", want.line};
      for (const OccurrenceId part : declared.names.part(want.of, entry).occurrences) {
        wanted_.insert(groups.moves_with.at(part));
      }
    }
    wanted_.erase(heaviest_);
  }

  void add(CentreLineId line, const std::vector<AxialStop>& stops) {
    std::set<std::size_t> on_line;
    for (const OccurrenceId part : lines_[line].occurrences) {
      on_line.insert(groups_.moves_with[part]);
    }
    if (on_line.size() < 2) {
      return;
    }
    const std::size_t ground = ground_of(on_line);
    const Chains ahead(stops, groups_, ground, &AxialStop::a, &AxialStop::b);
    const Chains back(stops, groups_, ground, &AxialStop::b, &AxialStop::a);
    for (const std::size_t group : on_line) {
      if (group == ground) {
        continue;
      }
      EndPlay play{group, ground, line, back.of(group), ahead.of(group), false, {}};
      if (play.back.empty() || play.ahead.empty()) {
        open_.push_back({group, line, !play.back.empty(), !play.ahead.empty()});
      } else {
        keep(std::move(play));
      }
    }
  }

  [[nodiscard]] EndPlays result() {
    EndPlays plays;
    plays.heaviest = heaviest_;
    for (auto& [group, list] : captured_) {
      for (EndPlay& play : list) {
        auto loop = loop_of(play.back, play.ahead, paths_, lines_[play.centre_line].line);
        play.closed = loop.has_value();
        play.loop = std::move(loop).value_or(std::vector<LoopLength>{});
        plays.captured.push_back(std::move(play));
      }
    }
    for (const Uncaptured& open : open_) {
      if (!captured_.contains(open.group)) {
        plays.open.push_back(open);
      }
    }
    return plays;
  }

 private:
  // Whether the second is the likelier of the two to stand still; of two alike the first is.
  [[nodiscard]] bool stands_before(std::size_t a, std::size_t b) const {
    const auto rank = [this](std::size_t group) {
      return std::tuple(turning_.contains(group) ? 0 : 1, wanted_.contains(group) ? 0 : 1,
                        volumes_[group]);
    };
    return rank(a) < rank(b);
  }

  [[nodiscard]] std::size_t ground_of(const std::set<std::size_t>& on_line) const {
    return *std::max_element(on_line.begin(), on_line.end(),
                             [this](std::size_t a, std::size_t b) { return stands_before(a, b); });
  }

  void keep(EndPlay play) {
    std::vector<EndPlay>& list = captured_[play.group];
    const Direction along = lines_[play.centre_line].line.along;
    const auto total = [](const EndPlay& of) { return travel_mm(of.back) + travel_mm(of.ahead); };
    for (EndPlay& known : list) {
      if (std::abs(dot(lines_[known.centre_line].line.along, along)) > 1.0 - 1e-6) {
        if (total(play) < total(known)) {
          known = std::move(play);
        }
        return;
      }
    }
    list.push_back(std::move(play));
  }

  const Model& model_;
  const List<CentreLine>& lines_;
  const Groups& groups_;
  std::vector<double> volumes_;
  FacePaths paths_;
  std::set<std::size_t> wanted_, turning_;
  std::size_t heaviest_ = 0;
  std::map<std::size_t, std::vector<EndPlay>> captured_;
  std::vector<Uncaptured> open_;
};

}  // namespace

double travel_mm(const std::vector<AxialStop>& stops) {
  return std::accumulate(stops.begin(), stops.end(), 0.0,
                         [](double sum, const AxialStop& stop) { return sum + stop.gap; });
}

EndPlays find_end_plays(const DeclaredJob& declared, const Groups& groups, const Turns& turns,
                        const PartLengths& lengths) {
  const Look& look = *declared.look;
  const auto stops =
      find_axial_stops(look.model, look.seats, groups.moves_with, look.settings.seats);
  Collector collector(declared, groups, turns, lengths);
  for (CentreLineId line; line < stops.size(); ++line) {
    collector.add(line, stops[line]);
  }
  return collector.result();
}

}  // namespace spotblue
