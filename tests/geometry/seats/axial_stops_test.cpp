#include "spotblue/geometry/axial_stops.hpp"

#include <gtest/gtest.h>

#include <numbers>

#include "support/value_parts.hpp"

namespace spotblue::axial_stops_test {

using namespace test;

// All stops of a model, over all its lines; every part a group of its own unless told.
std::vector<AxialStop> stops_of(const Model& model, std::vector<std::size_t> group_of = {}) {
  for (std::size_t i = group_of.size(); i < model.occurrences.size(); ++i) {
    group_of.push_back(i);
  }
  std::vector<AxialStop> all;
  for (const auto& stops :
       find_axial_stops(model, find_seats(model, SeatSettings{}), group_of, SeatSettings{})) {
    all.insert(all.end(), stops.begin(), stops.end());
  }
  return all;
}

// The stop of part `low` against part `high`, or nothing.
const AxialStop* stop_of(const std::vector<AxialStop>& stops, std::size_t low, std::size_t high) {
  for (const AxialStop& stop : stops) {
    if (stop.a.occurrence == low && stop.b.occurrence == high) {
      return &stop;
    }
  }
  return nullptr;
}

// A pin of 10 with a shoulder of 20 up to z = 5, and a wheel of 30 on it from `from`, 20 long.
Product shouldered_pin() {
  return turned_part({{0, -10}, {10, -10}, {10, 5}, {5, 5}, {5, 60}, {0, 60}});
}
Product wheel() { return ring_part(5.02, 15, 0, 20); }

TEST(AxialStops, AWideGapIsFoundWithItsArea) {
  const auto stops =
      stops_of(placed_model({{shouldered_pin(), Frame{}}, {wheel(), shifted(0, 0, 17.5)}}));
  const AxialStop* stop = stop_of(stops, 0, 1);
  ASSERT_NE(stop, nullptr);
  EXPECT_NEAR(stop->gap, 12.5, 1e-9);
  EXPECT_NEAR(stop->area, std::numbers::pi * (100.0 - 5.02 * 5.02), 1e-6);
  EXPECT_FALSE(stop->seat);
  EXPECT_EQ(stop_of(stops, 1, 0), nullptr);
}

TEST(AxialStops, AGapWithinTheLimitsOfSeatsIsTheSeats) {
  const auto stops =
      stops_of(placed_model({{shouldered_pin(), Frame{}}, {wheel(), shifted(0, 0, 5.3)}}));
  const AxialStop* stop = stop_of(stops, 0, 1);
  ASSERT_NE(stop, nullptr);
  EXPECT_NEAR(stop->gap, 0.3, 1e-9);
  EXPECT_TRUE(stop->seat);
}

TEST(AxialStops, PartsOfOneGroupDoNotStopEachOther) {
  EXPECT_TRUE(
      stops_of(placed_model({{shouldered_pin(), Frame{}}, {wheel(), shifted(0, 0, 17.5)}}), {4, 4})
          .empty());
}

TEST(AxialStops, TheNearerOfTwoShouldersWins) {
  const Product stepped =
      turned_part({{0, -10}, {14, -10}, {14, 2}, {10, 2}, {10, 5}, {5, 5}, {5, 60}, {0, 60}});
  const auto stops = stops_of(placed_model({{stepped, Frame{}}, {wheel(), shifted(0, 0, 17.5)}}));
  ASSERT_NE(stop_of(stops, 0, 1), nullptr);
  EXPECT_NEAR(stop_of(stops, 0, 1)->gap, 12.5, 1e-9);
}

TEST(AxialStops, FacesThatPassEachOtherDoNotStop) {
  // A sleeve whose bore clears the shoulder.
  const auto stops = stops_of(placed_model(
      {{shouldered_pin(), Frame{}}, {ring_part(10.03, 15, 0, 20), shifted(0, 0, -5.0)}}));
  EXPECT_TRUE(stops.empty());
}

TEST(AxialStops, ARingInAGrooveIsStoppedBothWays) {
  const Product shaft =
      turned_part({{0, 0}, {10, 0}, {10, 20}, {9, 20}, {9, 21.3}, {10, 21.3}, {10, 40}, {0, 40}});
  const auto stops = stops_of(
      placed_model({{shaft, Frame{}}, {ring_part(9.05, 14, 0, 1.2), shifted(0, 0, 20.1)}}));
  ASSERT_NE(stop_of(stops, 0, 1), nullptr);
  ASSERT_NE(stop_of(stops, 1, 0), nullptr);
  EXPECT_NEAR(stop_of(stops, 0, 1)->gap, 0.1, 1e-9);
  EXPECT_NEAR(stop_of(stops, 1, 0)->gap, 0.0, 1e-9);
}

// The same pair, turned over and moved in space.
TEST(AxialStops, DoNotDependOnThePose) {
  const Frame pose = compose(shifted(30, -20, 7), rotated(unit({1, 2, 3}), 1.1));
  const auto stops = stops_of(
      placed_model({{shouldered_pin(), pose}, {wheel(), compose(pose, shifted(0, 0, 17.5))}}));
  ASSERT_EQ(stops.size(), 1U);
  EXPECT_NEAR(stops.front().gap, 12.5, 1e-9);
}

}  // namespace spotblue::axial_stops_test
