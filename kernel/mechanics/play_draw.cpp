#include "spotblue/mechanics/play_draw.hpp"

#include <cmath>
#include <limits>
#include <optional>
#include <utility>
#include <vector>

#include "base/require.hpp"
#include "mechanics/gap_draw.hpp"
#include "mechanics/play_bounds.hpp"
#include "mechanics/play_ways.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

// Measured lengths go past their limits, which are two standard deviations off; past four times
// that, eight of them, none in 1e15 does.
constexpr double kFarthest = 4.0;
constexpr double kRounding_mm = 1e-9;

LengthBox box_of_draws(const PlayNet& net) {
  LengthBox box = box_of(net);
  for (std::size_t i = 0; i < net.lengths.size(); ++i) {
    if (net.lengths[i].spread == StackSpread::normal) {
      const double more = 0.5 * (kFarthest - 1.0) * (box.high[i] - box.low[i]);
      box.low[i] -= more;
      box.high[i] += more;
    }
  }
  return box;
}

PlayNet turned_round(PlayNet net) {
  for (PlayStop& stop : net.stops) {
    std::swap(stop.a, stop.b);
  }
  return net;
}

// Which stops can be of the shortest way from one body to another, whatever the lengths are.
void keep_way(const PlayNet& net, std::size_t from, std::size_t to, const LengthBox& box,
              std::vector<bool>& kept) {
  const std::vector<double> least = least_gaps(net, box);
  const std::vector<double> greatest = least_gaps(net, {box.high, box.low});
  const auto there = PlayWays(net).lengths_from(from, least);
  const auto onward = PlayWays(turned_round(net)).lengths_from(to, least);
  const auto longest = PlayWays(net).lengths_from(from, greatest);
  for (std::size_t i = 0; i < net.stops.size(); ++i) {
    kept[i] = kept[i] || !there || !onward || !longest ||
              (*there)[net.stops[i].b] + least[i] + (*onward)[net.stops[i].a] <=
                  (*longest)[to] + kRounding_mm;
  }
}

// The net without the stops that no draw comes to; only where all draws go together, since those
// may be what does not.
PlayNet of_what_counts(const PlayNet& net, std::size_t of, std::size_t on) {
  const LengthBox box = box_of_draws(net);
  try {
    if (tight_loop(net, PlayWays(net), box)) {
      return net;
    }
  } catch (const TooManyWays&) {
    return net;
  }
  std::vector<bool> kept(net.stops.size(), false);
  keep_way(net, on, of, box, kept);
  keep_way(net, of, on, box, kept);
  PlayNet few = net;
  few.stops.clear();
  for (std::size_t i = 0; i < kept.size(); ++i) {
    if (kept[i]) {
      few.stops.push_back(net.stops[i]);
    }
  }
  return few;
}

}  // namespace

PlayOutcome draw_plays(const PlayNet& net, std::size_t of, std::size_t on, Limits wanted,
                       const StackDraw& draw) {
  require_play_net(net);
  require_bodies(net, of, on);
  require_limits(wanted, "wanted");
  const PlayWays all(net);
  if (!all.leads(on, of) || !all.leads(of, on)) {
    throw Error(ErrorCode::bad_input, {{}, "net"},
                "\"" + net.bodies[of] + "\" is not stopped both ways by \"" + net.bodies[on] + '"',
                "ask relative_play first");
  }
  const PlayNet few = of_what_counts(net, of, on);
  const PlayWays ways(few);
  const std::vector<double> middles = middles_of(net);
  std::vector<bool> used(net.lengths.size(), false);
  for (const PlayStop& stop : few.stops) {
    for (const PlayTerm& term : stop.gap) {
      used[term.length] = true;
    }
  }
  std::vector<double> plays = draw_blocks(draw, [&](LengthDraw& lot, std::span<double> into) {
    std::vector<double> lengths = middles;
    std::vector<double> gaps(few.stops.size());
    std::vector<double> room;
    for (double& play : into) {
      for (std::size_t i = 0; i < lengths.size(); ++i) {
        if (used[i]) {
          lengths[i] = middles[i] + lot.off_middle(net.lengths[i]);
        }
      }
      gaps_into(few, lengths, gaps);
      play = ways.play(of, on, gaps, room).value_or(std::numeric_limits<double>::quiet_NaN());
    }
  });
  const auto drawn = static_cast<double>(plays.size());
  std::erase_if(plays, [](double play) { return std::isnan(play); });
  PlayOutcome outcome;
  outcome.share_apart = (drawn - static_cast<double>(plays.size())) / drawn;
  if (!plays.empty()) {
    outcome.plays = outcome_of(std::move(plays), wanted);
  }
  return outcome;
}

}  // namespace spotblue
