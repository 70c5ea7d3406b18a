#include "group/axial/body_play.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>
#include <utility>

#include "group/axial/part_setting.hpp"
#include "spotblue/mechanics/play_setting.hpp"

namespace spotblue {
namespace {

std::vector<AxialStop> stops_of(const StopNet& net, const std::vector<std::size_t>& numbers) {
  std::vector<AxialStop> stops;
  for (const std::size_t number : numbers) {
    stops.push_back(net.stops[number].stop);
  }
  return stops;
}

// The stops that are met first from where all is modelled; parts that overlap there touch.
std::optional<PlayLoop> modelled_loop(const StopNet& net, std::size_t of, std::size_t on) {
  std::vector<Length> gaps;
  for (const LineStop& one : net.stops) {
    gaps.push_back(Length::mm(std::max(one.stop.gap, 0.0)));
  }
  return loop_at(net.bench, of, on, gaps);
}

std::vector<StackLength> lengths_of(const StopNet& net, const PlayLoop& loop) {
  std::vector<StackLength> lengths;
  for (const PlayTerm& term : loop.lengths) {
    StackLength length = net.lengths[term.length];
    length.dimension.sense = term.count > 0 ? StackSense::opens : StackSense::closes;
    lengths.insert(lengths.end(), static_cast<std::size_t>(std::abs(term.count)), length);
  }
  std::stable_partition(lengths.begin(), lengths.end(), [](const StackLength& length) {
    return length.dimension.sense == StackSense::opens;
  });
  return lengths;
}

// The net's own lengths that any of the loops counts; what is grown of a measured gap is none.
std::set<std::size_t> counted(const StopNet& net, const RelativePlay& play) {
  std::set<std::size_t> lengths;
  for (const PlayLoop* loop : {&play.least, &play.greatest, &play.governing}) {
    for (const PlayTerm& term : loop->lengths) {
      if (term.length < net.lengths.size()) {
        lengths.insert(term.length);
      }
    }
  }
  return lengths;
}

void add_warm(const DeclaredJob& declared, BodyPlay& play, std::size_t of, std::size_t on) {
  if (!play.net->warm) {
    return;
  }
  const RelativePlay warm = relative_play(*play.net->warm, of, on);
  std::set<std::size_t> lengths = counted(*play.net, play.play);
  lengths.merge(counted(*play.net, warm));
  bool warmer = false;
  std::vector<OccurrenceId> unknown;
  for (const std::size_t length : lengths) {
    const StackLength& one = play.net->lengths[length];
    warmer = warmer || one.dimension.warmer_by_k != 0.0;
    if (one.warm_unknown && std::find(unknown.begin(), unknown.end(), one.part) == unknown.end()) {
      unknown.push_back(one.part);
      play.warm_unknown += (play.warm_unknown.empty() ? "" : ", ") + declared.names.id_of(one.part);
    }
  }
  if (warmer && unknown.empty()) {
    play.warm = warm.worst;
  }
}

}  // namespace

void work_out_play(const DeclaredJob& declared, BodyPlay& play) {
  const std::size_t of = play.net->body_of(play.of);
  const std::size_t on = play.net->body_of(play.on);
  play.play = relative_play(play.net->bench, of, on);
  play.lengths = lengths_of(*play.net, play.play.governing);
  const std::set<std::size_t> lengths = counted(*play.net, play.play);
  play.closed = std::none_of(lengths.begin(), lengths.end(), [&play](std::size_t length) {
    return play.net->lengths[length].source == LengthSource::not_closed;
  });
  play.warm.reset();
  play.warm_unknown.clear();
  add_warm(declared, play, of, on);
}

bool find_modelled_stops(BodyPlay& play) {
  const auto modelled =
      modelled_loop(*play.net, play.net->body_of(play.of), play.net->body_of(play.on));
  if (modelled) {
    play.back = stops_of(*play.net, modelled->back);
    play.ahead = stops_of(*play.net, modelled->ahead);
  }
  return modelled.has_value();
}

OccurrenceId main_part(const DeclaredJob& declared, const Groups& groups, std::size_t group) {
  const Model& model = declared.look->model;
  OccurrenceId chosen(model.occurrences.size());
  const auto volume = [&model](OccurrenceId part) {
    return model.products[model.occurrences[part].product].volume;
  };
  for (OccurrenceId part; part < model.occurrences.size(); ++part) {
    if (groups.moves_with[part] == group &&
        (chosen == model.occurrences.size() || volume(part) > volume(chosen))) {
      chosen = part;
    }
  }
  return chosen;
}

double travel_mm(const std::vector<AxialStop>& stops) {
  return std::accumulate(stops.begin(), stops.end(), 0.0,
                         [](double sum, const AxialStop& stop) { return sum + stop.gap; });
}

std::optional<Limits> room_for(const BodyPlay& play, const StackLength& length, Limits wanted) {
  PlayNet net = play.net->bench;
  const auto found = std::find_if(
      net.lengths.begin(), net.lengths.end(),
      [&length](const StackDimension& one) { return one.name == length.dimension.name; });
  if (found == net.lengths.end()) {
    return std::nullopt;
  }
  // Farther than what the play is off, and what all lengths may be off, no length helps.
  Length reach = wanted.upper + wanted.width() + play.play.worst.value_or(Limits{}).width();
  for (const Length end : {play.play.worst->lower, play.play.worst->upper}) {
    reach = reach + Length::mm(std::abs(end.in_mm()));
  }
  found->limits = {std::max(Length(), found->nominal - reach), found->nominal + reach};
  const std::vector<PlayWant> wants{
      {play.net->body_of(play.of), play.net->body_of(play.on), wanted}};
  return widest_window(
      setting_windows(net, static_cast<std::size_t>(found - net.lengths.begin()), wants));
}

}  // namespace spotblue
