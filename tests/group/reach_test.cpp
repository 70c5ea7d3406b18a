// How far a shaft can go aside, against all straight lines through two ends of its bearings.

#include "group/turning/reach.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <utility>

namespace spotblue::reach_test {

TEST(Reach, IsEndlessWithoutABearing) { EXPECT_TRUE(std::isinf(greatest_reach({}, 5.0))); }

// Lines drawn at random and pushed as far as the bearings let them: none passes the reach, and the
// farthest of all lines through two ends meets it.
TEST(Reach, IsWhatTheFarthestStraightLineReaches) {
  std::mt19937_64 draw(20261201);
  std::uniform_real_distribution<double> place(-100.0, 100.0);
  std::uniform_real_distribution<double> size(0.001, 0.2);
  for (int round = 0; round < 300; ++round) {
    SCOPED_TRACE(round);
    std::vector<Guided> bearings(1 + round % 4);
    std::vector<std::pair<double, double>> ends;
    for (Guided& bearing : bearings) {
      const double from = place(draw);
      bearing = {from, from + 1.0 + 50.0 * size(draw), size(draw)};
      ends.emplace_back(bearing.from, bearing.aside);
      ends.emplace_back(bearing.to, bearing.aside);
    }
    const double at = 2.0 * place(draw);
    double farthest = 0.0;
    for (const auto& [x, aside] : ends) {
      for (const auto& [u, other] : ends) {
        for (const double sense : {-1.0, 1.0}) {
          if (x == u) {
            continue;
          }
          const double slope = (sense * other - aside) / (u - x);
          const bool within = std::all_of(ends.begin(), ends.end(), [&](const auto& end) {
            return std::abs(aside + slope * (end.first - x)) <= end.second * (1.0 + 1e-9);
          });
          farthest = within ? std::max(farthest, std::abs(aside + slope * (at - x))) : farthest;
        }
      }
    }
    EXPECT_NEAR(greatest_reach(bearings, at), farthest, 1e-6 * (1.0 + farthest));
  }
}

}  // namespace spotblue::reach_test
