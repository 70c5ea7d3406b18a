#include "spotblue/mechanics/play_net.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "base/require.hpp"
#include "mechanics/play_bounds.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

std::vector<double> nominals(const PlayNet& net) {
  std::vector<double> lengths;
  for (const StackDimension& length : net.lengths) {
    lengths.push_back(length.nominal.in_mm());
  }
  return lengths;
}

Limits root_sum_square(const PlayNet& net, const FoundLoop& loop) {
  double squares = 0.0;
  for (std::size_t i = 0; i < net.lengths.size(); ++i) {
    const double half = 0.5 * loop.sum[i] * net.lengths[i].limits.width().in_mm();
    squares += half * half;
  }
  const double half = std::sqrt(squares);
  const double middle = value_at(loop.sum, middles_of(net));
  return {Length::mm(middle - half), Length::mm(middle + half)};
}

std::vector<Length> in_lengths(const std::vector<double>& values) {
  std::vector<Length> lengths;
  std::transform(values.begin(), values.end(), std::back_inserter(lengths), Length::mm);
  return lengths;
}

void tell_together(const PlayQuestion& asked, const LengthBox& box, RelativePlay& play) {
  auto tight = tight_loop(asked.net, asked.ways, box);
  if (!tight) {
    return;
  }
  const PlaySum sum = sum_of(asked.net, *tight);
  play.lacking = Length::mm(-value_at(sum, where_least(sum, box)));
  play.tight = std::move(*tight);
  play.go_together =
      ever_together(asked.net, asked.ways, box) ? GoTogether::sometimes : GoTogether::never;
}

// @pre stopped both ways
void tell_bounds(const PlayQuestion& asked, const LengthBox& box, RelativePlay& play) {
  const auto least = least_play(asked, box);
  const auto greatest = greatest_play(
      asked, box,
      play.go_together == GoTogether::sometimes ? Counting::that_go_together : Counting::all);
  const auto governing = tightest(asked, gaps_at(asked.net, middles_of(asked.net)));
  const auto nominal = tightest(asked, gaps_at(asked.net, nominals(asked.net)));
  play.worst = Limits{Length::mm(least->value), Length::mm(greatest->value)};
  play.least = loop_of(*least);
  play.least_at = in_lengths(least->lengths);
  play.greatest = loop_of(*greatest);
  play.greatest_at = in_lengths(greatest->lengths);
  play.governing = loop_of(*governing);
  play.root_sum_square = root_sum_square(asked.net, *governing);
  play.nominal = Length::mm(nominal->value);
}

}  // namespace

RelativePlay relative_play(const PlayNet& net, std::size_t of, std::size_t on) {
  require_play_net(net);
  require_bodies(net, of, on);
  const PlayWays ways(net);
  const PlayQuestion asked{net, ways, of, on};
  const LengthBox box = box_of(net);
  RelativePlay play;
  try {
    play.stopped_ahead = ways.leads(on, of);
    play.stopped_back = ways.leads(of, on);
    tell_together(asked, box, play);
    if (play.stopped_ahead && play.stopped_back) {
      tell_bounds(asked, box, play);
    }
  } catch (const TooManyWays&) {
    play.settled = false;
    play.worst.reset();
  }
  return play;
}

std::optional<PlayLoop> loop_at(const PlayNet& net, std::size_t of, std::size_t on,
                                std::span<const Length> gaps) {
  require_play_net(net);
  require_bodies(net, of, on);
  if (gaps.size() != net.stops.size()) {
    throw Error(ErrorCode::bad_input, {{}, "gaps"},
                fmt::format("need one a stop, {}, got {}", net.stops.size(), gaps.size()),
                "give each stop's gap, in order");
  }
  std::vector<double> values;
  for (std::size_t i = 0; i < gaps.size(); ++i) {
    require_finite(gaps[i].in_mm(), fmt::format("gaps[{}]", i), "mm");
    values.push_back(gaps[i].in_mm());
  }
  const PlayWays ways(net);
  try {
    const auto loop = tightest({net, ways, of, on}, values);
    return loop ? std::optional(loop_of(*loop)) : std::nullopt;
  } catch (const TooManyWays&) {
    return std::nullopt;
  }
}

}  // namespace spotblue
