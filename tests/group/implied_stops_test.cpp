// Stops that others make needless, worked by hand.

#include "group/axial/implied_stops.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spotblue::implied_stops_test {

using ::testing::ElementsAre;

// Three bodies in a row: 0.1 to 0.2 between the first two, 0.3 to 0.4 between the others, the
// middle one 2 to 2.1 thick.
PlayNet row(std::vector<PlayTerm> over_both) {
  PlayNet net;
  net.bodies = {"A", "B", "C"};
  for (const auto& [low, high] : {std::pair{0.1, 0.2}, std::pair{0.3, 0.4}, std::pair{2.0, 2.1}}) {
    StackDimension length;
    length.name = "length";
    length.limits = {Length::mm(low), Length::mm(high)};
    net.lengths.push_back(length);
  }
  net.stops = {{0, 1, {{0, 1}}}, {1, 2, {{1, 1}}}, {0, 2, std::move(over_both)}};
  return net;
}

TEST(ImpliedStops, WhatLiesBehindAnotherBodyIsMetAfterIt) {
  EXPECT_THAT(implied_stops(row({{0, 1}, {1, 1}, {2, 1}})), ElementsAre(false, false, true));
}

// 0.3 to 0.4 straight across may be less than the other two, 0.4 to 0.6.
TEST(ImpliedStops, WhatMayBeMetFirstStays) {
  EXPECT_THAT(implied_stops(row({{1, 1}})), ElementsAre(false, false, false));
}

TEST(ImpliedStops, TwoThatAreMetTogetherBothStay) {
  PlayNet net = row({{2, 1}});
  net.stops.push_back(net.stops[0]);
  EXPECT_THAT(implied_stops(net), ElementsAre(false, false, true, false));
}

}  // namespace spotblue::implied_stops_test
