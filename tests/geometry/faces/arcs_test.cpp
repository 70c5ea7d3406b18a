#include "geometry/model/arcs.hpp"

#include <gtest/gtest.h>

#include <numbers>

namespace spotblue::arcs_test {

constexpr double kPi = std::numbers::pi;

TEST(Arcs, TwoHalvesMakeAFullTurn) {
  const auto arcs = merged_arcs({{1.0, kPi}, {1.0 + kPi, kPi}});
  ASSERT_EQ(arcs.size(), 1U);
  EXPECT_NEAR(arcs[0].sweep, 2.0 * kPi, 1e-12);
}

TEST(Arcs, OverlappingArcsCountOnce) {
  EXPECT_NEAR(coverage({{0.0, 1.0}, {0.5, 1.0}}), 1.5, 1e-12);
}

TEST(Arcs, AnArcAcrossZeroStaysOneArc) {
  const auto arcs = merged_arcs({{-0.5, 1.0}});
  ASSERT_EQ(arcs.size(), 1U);
  EXPECT_NEAR(arcs[0].sweep, 1.0, 1e-12);
}

TEST(Arcs, CommonIsWhatBothCover) {
  EXPECT_NEAR(coverage(common_arcs({{0.0, 2.0}}, {{1.5, 2.0}})), 0.5, 1e-12);
  EXPECT_TRUE(common_arcs({{0.0, 1.0}}, {{2.0, 1.0}}).empty());
}

TEST(Arcs, WithoutLeavesTheRestOfTheTurn) {
  EXPECT_NEAR(coverage(arcs_without({{0.0, 2.0 * kPi}}, {{6.0, 1.0}})), 2.0 * kPi - 1.0, 1e-12);
}

TEST(Arcs, RecountingTheOtherWayRoundMirrorsAndTurns) {
  // 0.2..0.5 counted backwards from 1.0: angle a there is 1.0 - a here, so 0.5..0.8.
  const auto arcs = recounted_arcs({{0.2, 0.3}}, 1.0, -1);
  EXPECT_NEAR(arcs[0].from, 0.5, 1e-12);
  EXPECT_NEAR(arcs[0].sweep, 0.3, 1e-12);
}

TEST(Stretches, TouchingStretchesJoin) {
  EXPECT_EQ(merged_stretches({{1.0, 2.0}, {0.0, 1.0}}), (Stretches{{0.0, 2.0}}));
}

TEST(Stretches, CommonOfInterruptedStretchesKeepsTheGap) {
  const auto common = common_stretches({{0.0, 1.0}, {3.0, 4.0}}, {{0.5, 3.5}});
  EXPECT_EQ(common, (Stretches{{0.5, 1.0}, {3.0, 3.5}}));
  EXPECT_EQ(total_length(common), 1.0);
}

}  // namespace spotblue::arcs_test
