// Which bodies stop each other in rings, worked by hand.

#include "group/axial/stop_blocks.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace spotblue::stop_blocks_test {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

// 0-1-2 are a ring, 2-3 hang on each other by two stops, 4 on 0 by one; 5 stands alone.
const std::vector<BodyPair> kPairs{{0, 1}, {1, 2}, {2, 0}, {2, 3}, {3, 2}, {4, 0}};

TEST(StopBlocks, OfARingAreOneAndOfWhatHangsOnOneBodyAnother) {
  const StopBlocks blocks(6, kPairs);
  const auto& of = blocks.of_pair();
  EXPECT_EQ(of[0], of[1]);
  EXPECT_EQ(of[0], of[2]);
  EXPECT_EQ(of[3], of[4]);
  EXPECT_NE(of[0], of[3]);
  EXPECT_NE(of[0], of[5]);
}

TEST(StopBlocks, BetweenTwoBodiesAreAllOnTheWay) {
  const StopBlocks blocks(6, kPairs);
  const auto& of = blocks.of_pair();
  EXPECT_THAT(blocks.between(0, 1), ElementsAre(of[0]));
  EXPECT_THAT(blocks.between(3, 4).size(), 3U);
  EXPECT_THAT(blocks.between(1, 3), ElementsAre(std::min(of[0], of[3]), std::max(of[0], of[3])));
  EXPECT_THAT(blocks.between(0, 5), IsEmpty());
}

// Deeper than any stack of calls would go.
TEST(StopBlocks, OfAVeryLongRowAreFound) {
  constexpr std::size_t bodies = 200'000;
  std::vector<BodyPair> pairs;
  for (std::size_t i = 1; i < bodies; ++i) {
    pairs.push_back({i - 1, i});
  }
  EXPECT_EQ(StopBlocks(bodies, pairs).between(0, bodies - 1).size(), bodies - 1);
}

}  // namespace spotblue::stop_blocks_test
