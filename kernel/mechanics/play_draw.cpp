#include "spotblue/mechanics/play_draw.hpp"

#include <cmath>
#include <limits>
#include <utility>
#include <vector>

#include "mechanics/gap_draw.hpp"
#include "mechanics/play_ways.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {

PlayOutcome draw_plays(const PlayNet& net, std::size_t of, std::size_t on, Limits wanted,
                       const StackDraw& draw) {
  require_play_net(net);
  require_bodies(net, of, on);
  const PlayWays ways(net);
  if (!ways.leads(on, of) || !ways.leads(of, on)) {
    throw Error(ErrorCode::bad_input, {{}, "net"},
                "\"" + net.bodies[of] + "\" is not stopped both ways by \"" + net.bodies[on] + '"',
                "ask relative_play first");
  }
  const std::vector<double> middles = middles_of(net);
  std::vector<double> plays = draw_blocks(draw, [&](LengthDraw& lot, std::span<double> into) {
    std::vector<double> lengths(net.lengths.size());
    for (double& play : into) {
      for (std::size_t i = 0; i < lengths.size(); ++i) {
        lengths[i] = middles[i] + lot.off_middle(net.lengths[i]);
      }
      play = ways.play(of, on, gaps_at(net, lengths))
                 .value_or(std::numeric_limits<double>::quiet_NaN());
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
