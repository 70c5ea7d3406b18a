#include "mechanics/play_ways.hpp"

#include <fmt/format.h>

#include <cmath>
#include <limits>
#include <utility>

#include "mechanics/require.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

constexpr double kFar = std::numeric_limits<double>::infinity();
constexpr std::size_t kNone = std::numeric_limits<std::size_t>::max();
// Less than this is rounding: of a way, and of each stop of a loop.
constexpr double kSameWay_mm = 1e-12;
constexpr double kShort_mm = 1e-10;
// Steps over which every way is tried in all that is asked of a net, before it is said that there
// are too many.
constexpr std::size_t kMostSteps = 10'000'000;

[[noreturn]] void refuse(const std::string& place, const std::string& rule, std::string cure) {
  throw Error(ErrorCode::bad_input, {{}, place}, rule, std::move(cure));
}

void require_stop(const PlayNet& net, const PlayStop& stop, const std::string& place) {
  require_index(stop.a, net.bodies.size(), place + ".a", "body");
  require_index(stop.b, net.bodies.size(), place + ".b", "body");
  if (stop.a == stop.b) {
    refuse(place, fmt::format("\"{}\" can not stop itself", net.bodies[stop.a]),
           "leave it out, or name two bodies");
  }
  for (const PlayTerm& term : stop.gap) {
    require_index(term.length, net.lengths.size(), place, "length");
    if (term.count == 0) {
      refuse(place, "a length counts 0 times", "leave it out");
    }
  }
}

}  // namespace

void require_index(std::size_t index, std::size_t count, const std::string& place,
                   std::string_view what) {
  if (index >= count) {
    refuse(place, fmt::format("there is no {} {}: the net has {}", what, index, count),
           "count from 0");
  }
}

void require_bodies(const PlayNet& net, std::size_t of, std::size_t on, const std::string& under) {
  require_index(of, net.bodies.size(), under + "of", "body");
  require_index(on, net.bodies.size(), under + "on", "body");
  if (of == on) {
    refuse(under + "on", fmt::format("\"{}\" has no play relative to itself", net.bodies[of]),
           "name two bodies");
  }
}

void require_play_net(const PlayNet& net) {
  require_dimensions(net.lengths, "net.lengths");
  for (std::size_t i = 0; i < net.lengths.size(); ++i) {
    if (net.lengths[i].sense != StackSense::opens) {
      refuse(fmt::format("net.lengths[{}].sense", i),
             fmt::format("\"{}\" closes: a length of a net opens, its stops say what it does",
                         net.lengths[i].name),
             "give its terms a negative count");
    }
  }
  for (std::size_t i = 0; i < net.stops.size(); ++i) {
    require_stop(net, net.stops[i], fmt::format("net.stops[{}]", i));
  }
}

LengthBox box_of(const PlayNet& net) {
  LengthBox box;
  for (const StackDimension& length : net.lengths) {
    box.low.push_back(length.limits.lower.in_mm());
    box.high.push_back(length.limits.upper.in_mm());
  }
  return box;
}

std::vector<double> middles_of(const PlayNet& net) {
  std::vector<double> lengths;
  for (const StackDimension& length : net.lengths) {
    lengths.push_back(0.5 * (length.limits.lower + length.limits.upper).in_mm());
  }
  return lengths;
}

PlaySum sum_of(const PlayNet& net, std::span<const std::size_t> stops) {
  PlaySum sum(net.lengths.size(), 0.0);
  for (const std::size_t stop : stops) {
    for (const PlayTerm& term : net.stops[stop].gap) {
      sum[term.length] += term.count;
    }
  }
  return sum;
}

std::vector<PlayTerm> terms_of(const PlaySum& sum) {
  std::vector<PlayTerm> terms;
  for (std::size_t i = 0; i < sum.size(); ++i) {
    if (sum[i] != 0.0) {
      terms.push_back({i, static_cast<int>(sum[i])});
    }
  }
  return terms;
}

double value_at(const PlaySum& sum, std::span<const double> lengths) {
  double value = 0.0;
  for (std::size_t i = 0; i < sum.size(); ++i) {
    value += sum[i] == 0.0 ? 0.0 : sum[i] * lengths[i];
  }
  return value;
}

std::vector<double> where_least(const PlaySum& sum, const LengthBox& box) {
  std::vector<double> lengths = box.low;
  for (std::size_t i = 0; i < sum.size(); ++i) {
    lengths[i] = sum[i] < 0.0 ? box.high[i] : box.low[i];
  }
  return lengths;
}

std::vector<double> where_greatest(const PlaySum& sum, const LengthBox& box) {
  return where_least(sum, {box.high, box.low});
}

void gaps_into(const PlayNet& net, std::span<const double> lengths, std::span<double> gaps) {
  for (std::size_t i = 0; i < net.stops.size(); ++i) {
    gaps[i] = 0.0;
    for (const PlayTerm& term : net.stops[i].gap) {
      gaps[i] += term.count * lengths[term.length];
    }
  }
}

std::vector<double> gaps_at(const PlayNet& net, std::span<const double> lengths) {
  std::vector<double> gaps(net.stops.size());
  gaps_into(net, lengths, gaps);
  return gaps;
}

std::vector<double> least_gaps(const PlayNet& net, const LengthBox& box) {
  std::vector<double> gaps;
  gaps.reserve(net.stops.size());
  for (const PlayStop& stop : net.stops) {
    double gap = 0.0;
    for (const PlayTerm& term : stop.gap) {
      gap += term.count * (term.count > 0 ? box.low[term.length] : box.high[term.length]);
    }
    gaps.push_back(gap);
  }
  return gaps;
}

std::size_t most_shared(const PlayNet& net, std::span<const std::size_t> stops,
                        const LengthBox& box) {
  std::vector<double> counted(net.lengths.size(), 0.0);
  for (const std::size_t stop : stops) {
    for (const PlayTerm& term : net.stops[stop].gap) {
      counted[term.length] += std::abs(term.count);
    }
  }
  const PlaySum sum = sum_of(net, stops);
  std::size_t chosen = net.lengths.size();
  double most = 0.0;
  for (std::size_t i = 0; i < sum.size(); ++i) {
    const double worth = (counted[i] - std::abs(sum[i])) * (box.high[i] - box.low[i]);
    if (worth > most) {
      most = worth;
      chosen = i;
    }
  }
  return chosen;
}

// Every way that comes to no body twice; for nets where going round a loop shortens a way.
class EveryWay {
 public:
  EveryWay(const PlayWays& ways, std::size_t to, std::span<const double> gaps)
      : ways_(ways), to_(to), gaps_(gaps), been_(ways.bodies_, false) {}

  std::optional<std::vector<std::size_t>> from(std::size_t body) {
    go(body, 0.0);
    if (best_ == kFar) {
      return std::nullopt;
    }
    return std::vector<std::size_t>(chosen_.rbegin(), chosen_.rend());
  }

 private:
  void go(std::size_t body, double length) {
    if (++ways_.steps_ > kMostSteps) {
      throw TooManyWays();
    }
    if (ways_.steps_ % 4096 == 0) {
      stop_if_asked();
    }
    if (body == to_) {
      if (length < best_) {
        best_ = length;
        chosen_ = way_;
      }
      return;
    }
    been_[body] = true;
    for (const std::size_t stop : ways_.out_[body]) {
      const std::size_t next = ways_.arcs_[stop].to;
      if (!been_[next]) {
        way_.push_back(stop);
        go(next, length + gaps_[stop]);
        way_.pop_back();
      }
    }
    been_[body] = false;
  }

  const PlayWays& ways_;
  std::size_t to_;
  std::span<const double> gaps_;
  std::vector<bool> been_;
  std::vector<std::size_t> way_, chosen_;
  double best_ = kFar;
};

PlayWays::PlayWays(const PlayNet& net) : bodies_(net.bodies.size()), out_(net.bodies.size()) {
  arcs_.reserve(net.stops.size());
  for (std::size_t i = 0; i < net.stops.size(); ++i) {
    arcs_.push_back({net.stops[i].b, net.stops[i].a});
    out_[net.stops[i].b].push_back(i);
  }
}

bool PlayWays::leads(std::size_t from, std::size_t to) const {
  return ways_from(from, std::vector<double>(arcs_.size(), 0.0)).length[to] < kFar;
}

std::optional<double> PlayWays::play(std::size_t of, std::size_t on, std::span<const double> gaps,
                                     std::vector<double>& lengths) const {
  double play = 0.0;
  for (const auto& [from, to] : {std::pair{on, of}, std::pair{of, on}}) {
    lengths.assign(bodies_, kFar);
    lengths[from] = 0.0;
    bool changed = true;
    for (std::size_t round = 0; changed && round < bodies_; ++round) {
      changed = false;
      for (std::size_t stop = 0; stop < arcs_.size(); ++stop) {
        const auto [start, end] = arcs_[stop];
        const double further = lengths[start] + gaps[stop];
        if (further < lengths[end] - kSameWay_mm) {
          lengths[end] = further;
          changed = true;
        }
      }
    }
    if (changed || lengths[from] < 0.0) {
      return std::nullopt;
    }
    play += lengths[to];
  }
  return play;
}

std::optional<std::vector<double>> PlayWays::lengths_from(std::size_t body,
                                                          std::span<const double> gaps) const {
  From ways = ways_from(body, gaps);
  return ways.settled ? std::optional(std::move(ways.length)) : std::nullopt;
}

// Bellman and Ford's rounds, while no loop shortens a way.
PlayWays::From PlayWays::ways_from(std::size_t body, std::span<const double> gaps) const {
  From ways{std::vector<double>(bodies_, kFar), std::vector<std::size_t>(bodies_, kNone), false};
  ways.length[body] = 0.0;
  bool changed = true;
  for (std::size_t round = 0; changed && round < bodies_; ++round) {
    changed = false;
    for (std::size_t stop = 0; stop < arcs_.size(); ++stop) {
      const auto [start, end] = arcs_[stop];
      if (ways.length[start] + gaps[stop] < ways.length[end] - kSameWay_mm) {
        ways.length[end] = ways.length[start] + gaps[stop];
        ways.by[end] = stop;
        changed = true;
      }
    }
  }
  ways.settled = !changed && ways.by[body] == kNone;
  return ways;
}

std::optional<std::vector<std::size_t>> PlayWays::shortest(std::size_t from, std::size_t to,
                                                           std::span<const double> gaps) const {
  const From ways = ways_from(from, gaps);
  if (!ways.settled) {
    return EveryWay(*this, to, gaps).from(from);
  }
  if (ways.length[to] == kFar) {
    return std::nullopt;
  }
  std::vector<std::size_t> way;
  for (std::size_t body = to; body != from; body = arcs_[way.back()].from) {
    way.push_back(ways.by[body]);
  }
  return way;
}

std::optional<std::vector<std::size_t>> PlayWays::short_loop(std::span<const double> gaps) const {
  std::vector<double> length(bodies_, 0.0);
  std::vector<std::size_t> by(bodies_, kNone);
  std::size_t last = 0;
  bool changed = true;
  for (std::size_t round = 0; changed && round <= bodies_; ++round) {
    changed = false;
    for (std::size_t stop = 0; stop < arcs_.size(); ++stop) {
      const auto [start, end] = arcs_[stop];
      const double further = length[start] + gaps[stop] + kShort_mm;
      if (further < length[end]) {
        length[end] = further;
        by[end] = stop;
        last = end;
        changed = true;
      }
    }
  }
  if (!changed) {
    return std::nullopt;
  }
  // So many steps back lead into the loop.
  for (std::size_t i = 0; i < bodies_ && by[last] != kNone; ++i) {
    last = arcs_[by[last]].from;
  }
  if (by[last] == kNone) {
    return std::nullopt;
  }
  std::vector<std::size_t> loop;
  std::size_t body = last;
  do {
    loop.push_back(by[body]);
    body = arcs_[by[body]].from;
  } while (body != last);
  return loop;
}

}  // namespace spotblue
