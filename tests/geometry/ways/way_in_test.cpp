// Orders of assembly, on parts made of plain values whose way in a person can see.
#include "spotblue/geometry/way_in.hpp"

#include <gmock/gmock.h>

#include <algorithm>
#include <numbers>

#include "support/value_parts.hpp"

namespace spotblue::way_in_test {

using test::placed_model;
using test::ring_part;
using test::turned_part;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

using Parts = std::vector<std::pair<Product, Frame>>;

/// All parts on one line along z, with the seats that the search finds.
std::vector<WayIn> ways(const Model& model, const WayInOptions& options = {}) {
  return ways_in(model, find_seats(model, {}), options);
}
WayIn only_way(const Parts& parts, const WayInOptions& options = {}) {
  std::vector<WayIn> found = ways(placed_model(parts), options);
  EXPECT_THAT(found, SizeIs(1));
  return found.empty() ? WayIn{} : found.front();
}

std::vector<std::size_t> order(const WayIn& way) {
  std::vector<std::size_t> parts;
  for (const WayStep& step : way.steps) {
    parts.insert(parts.end(), step.parts.begin(), step.parts.end());
  }
  return parts;
}

/// Shaft 20 with a collar 30 from z 40 to 50, of 100.
Product collared_shaft() {
  return turned_part(
      {{0, 0}, {10, 0}, {10, 40}, {15, 40}, {15, 50}, {10, 50}, {10, 100}, {0, 100}});
}

TEST(WayIn, ARingSlidesOnFromTheEndOfItsOwnSide) {
  const WayIn way = only_way({{collared_shaft(), {}}, {ring_part(10.01, 18, 10, 30), {}}});
  ASSERT_THAT(way.steps, SizeIs(1));
  EXPECT_EQ(way.base, 0U);
  EXPECT_THAT(way.steps[0].parts, ElementsAre(1U));
  EXPECT_NEAR(way.steps[0].along.z(), 1.0, 1e-12);
  EXPECT_EQ(way.steps[0].how, WayHow::slide);
  EXPECT_THAT(way.blocked, IsEmpty());
  EXPECT_THAT(way.not_told, IsEmpty());
}

// Acceptance 4 of the issue: a ring behind a shoulder, with the name of what blocks it.
TEST(WayIn, ARingBetweenTwoShouldersIsBlockedByTheShaft) {
  const Product shaft =
      turned_part({{0, 0}, {12.5, 0}, {12.5, 10}, {10, 10}, {10, 40}, {15, 40}, {15, 60}, {0, 60}});
  const WayIn way = only_way({{shaft, {}}, {ring_part(10.01, 18, 15, 30), {}}});
  EXPECT_THAT(way.steps, IsEmpty());
  ASSERT_THAT(way.blocked, SizeIs(2));
  for (const Blockage& blockage : way.blocked) {
    EXPECT_EQ(blockage.part, 1U);
    EXPECT_EQ(blockage.by, 0U);
    EXPECT_NEAR(blockage.has.value(), 20.02, 1e-9);
    EXPECT_NEAR(blockage.needs, blockage.leaving.z() > 0.0 ? 30.0 : 25.0, 1e-9);
  }
}

TEST(WayIn, ABallBehindASmallerMouthIsBlockedByItsHousing) {
  const Product housing =
      turned_part({{10, 0}, {30, 0}, {30, 50}, {8, 50}, {8, 40}, {15, 40}, {15, 10}, {10, 10}});
  const WayIn way = only_way({{housing, {}}, {ring_part(0, 14.98, 12, 38), {}}});
  ASSERT_THAT(way.blocked, SizeIs(2));
  EXPECT_EQ(way.blocked[0].by, 0U);
  EXPECT_NEAR(way.blocked[0].needs, 29.96, 1e-9);
  EXPECT_NEAR(way.blocked[0].has.value(), 16.0, 1e-9);
  EXPECT_NEAR(way.blocked[1].has.value(), 20.0, 1e-9);
}

TEST(WayIn, PartsOnOneSideGoOnInnermostFirst) {
  const WayIn way = only_way({{collared_shaft(), {}},
                              {ring_part(10.01, 18, 75, 90), {}},
                              {ring_part(10.01, 18, 51, 60), {}},
                              {ring_part(10.01, 18, 61, 74), {}}});
  EXPECT_THAT(order(way), ElementsAre(2U, 3U, 1U));
}

TEST(WayIn, TheLastPartNamesThoseItHoldsIn) {
  const WayIn way = only_way({{collared_shaft(), {}},
                              {ring_part(10.01, 18, 51, 60), {}},
                              {ring_part(10.01, 18, 61, 70), {}}});
  ASSERT_THAT(way.steps, SizeIs(2));
  EXPECT_THAT(way.steps[1].holds, ElementsAre(1U));
}

TEST(WayIn, ABushIsPressedIntoItsWheelBeforeTheWheelGoesOn) {
  // Flange of the bush towards the collar, the wheel behind it.
  const Product bush =
      turned_part({{10.02, 50}, {24, 50}, {24, 53}, {14, 53}, {14, 80}, {10.02, 80}});
  WayInOptions options;
  options.pressed = {{OccurrenceId(2), OccurrenceId(1)}};
  const WayIn way =
      only_way({{collared_shaft(), {}}, {bush, {}}, {ring_part(13.99, 30, 53, 78), {}}}, options);
  ASSERT_THAT(way.steps, SizeIs(2));
  EXPECT_EQ(way.steps[0].how, WayHow::press);
  EXPECT_THAT(way.steps[0].parts, SizeIs(1));
  EXPECT_EQ(way.steps[1].how, WayHow::slide);
  EXPECT_THAT(way.steps[1].parts, ElementsAre(2U, 1U));
  EXPECT_NEAR(way.steps[1].along.z(), -1.0, 1e-12);
}

TEST(WayIn, APressFitIsNoBlockButTheSameOverlapElsewhereIs) {
  // The ring sits pressed on 20.02; to come off the other way it would have to pass 20.2.
  const Product shaft =
      turned_part({{0, 0}, {10.1, 0}, {10.1, 20}, {10.01, 20}, {10.01, 60}, {0, 60}});
  WayInOptions options;
  options.pressed = {{OccurrenceId(1), OccurrenceId(0)}};
  const WayIn way = only_way({{shaft, {}}, {ring_part(10, 18, 30, 50), {}}}, options);
  ASSERT_THAT(way.steps, SizeIs(1));
  EXPECT_EQ(way.steps[0].how, WayHow::press);
  EXPECT_NEAR(way.steps[0].along.z(), -1.0, 1e-12);
}

TEST(WayIn, ANutTurnsThroughItsThread) {
  const Product stud = turned_part({{0, 0}, {12, 0}, {12, 20}, {8, 20}, {8, 60}, {0, 60}});
  const WayIn way = only_way({{stud, {}}, {ring_part(6.917, 12, 30, 43), {}}});
  ASSERT_THAT(way.steps, SizeIs(1));
  EXPECT_EQ(way.steps[0].how, WayHow::screw);
  EXPECT_NEAR(way.steps[0].along.z(), -1.0, 1e-12);
}

/// Housing with a groove of 44.4 in its bore of 42, open upward, bottom at 10.
Product grooved_housing() {
  return turned_part({{0, 0},
                      {30, 0},
                      {30, 40},
                      {21, 40},
                      {21, 32},
                      {22.2, 32},
                      {22.2, 30},
                      {21, 30},
                      {21, 10},
                      {0, 10}});
}

TEST(WayIn, ARingInAGrooveIsBlockedUnlessItSprings) {
  const Parts parts{{grooved_housing(), {}}, {ring_part(18.5, 22.1, 30, 31.9), {}}};
  EXPECT_THAT(only_way(parts).blocked, ::testing::Not(IsEmpty()));
  WayInOptions options;
  options.springs = {OccurrenceId(1)};
  const WayIn way = only_way(parts, options);
  EXPECT_THAT(way.blocked, IsEmpty());
  ASSERT_THAT(way.steps, SizeIs(1));
  EXPECT_EQ(way.steps[0].how, WayHow::spring_in);
}

TEST(WayIn, ASprungRingStillHoldsInWhatIsBehindIt) {
  WayInOptions options;
  options.springs = {OccurrenceId(2)};
  const WayIn way = only_way({{grooved_housing(), {}},
                              {ring_part(17, 20.99, 12, 29.9), {}},
                              {ring_part(18.5, 22.1, 30, 31.9), {}}},
                             options);
  EXPECT_THAT(order(way), ElementsAre(1U, 2U));
  ASSERT_THAT(way.steps, SizeIs(2));
  EXPECT_THAT(way.steps[1].holds, ElementsAre(1U));
}

TEST(WayIn, AnOverlapAsFoundIsNoBlockForMovingApart) {
  const Parts parts{{collared_shaft(), {}}, {ring_part(10.01, 18, 49.8, 70), {}}};
  EXPECT_THAT(only_way(parts).blocked, ::testing::Not(IsEmpty()));
  WayInOptions options;
  options.given = {{OccurrenceId(0), OccurrenceId(1), 0.2}};
  const WayIn way = only_way(parts, options);
  EXPECT_THAT(way.blocked, IsEmpty());
  ASSERT_THAT(way.steps, SizeIs(1));
  EXPECT_NEAR(way.steps[0].along.z(), -1.0, 1e-12);
}

TEST(WayIn, BlocksAtOtherAnglesAreNotCalledBlocked) {
  // A hexagon over a slot's worth of block: outlines about the line overlap, metal may not.
  const Product plate = test::block_part({-30, -30, 20}, {30, 30, 30}, {{0, 0, 24}});
  const Product cap = test::block_part({-11, -11, 40}, {11, 11, 60}, {{0, 0, 10.02}});
  const Product rod = ring_part(0, 5, 0, 70);
  const Product low = test::block_part({-20, -20, 0}, {20, 20, 10}, {{0, 0, 10.02}});
  const WayIn way = only_way({{rod, {}}, {low, {}}, {cap, {}}, {plate, {}}});
  EXPECT_THAT(way.blocked, IsEmpty());
}

class WayInAnyPose : public ::testing::TestWithParam<int> {};

TEST_P(WayInAnyPose, IsTheSame) {
  const double k = GetParam();
  Frame pose = compose(test::shifted(30 * k, -7, 12 * k),
                       test::rotated(unit({1, 0.3 * k, -0.2}), 0.7 * k + 0.1));
  if (GetParam() % 2 == 1) {
    pose = compose(pose, Frame{{{{-1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}}}});
  }
  Parts parts{{collared_shaft(), {}},
              {ring_part(10.01, 18, 75, 90), {}},
              {ring_part(10.01, 18, 51, 60), {}},
              {ring_part(10.01, 20, 5, 20), {}}};
  const WayIn straight = only_way(parts);
  for (auto& [product, frame] : parts) {
    frame = pose;
  }
  const WayIn posed = only_way(parts);
  ASSERT_EQ(straight.steps.size(), 3U);
  ASSERT_EQ(posed.steps.size(), 3U);
  for (std::size_t i = 0; i < 3; ++i) {
    const Direction along = place_direction(pose, straight.steps[i].along);
    const auto same = std::ranges::find_if(
        posed.steps, [&](const WayStep& step) { return step.parts == straight.steps[i].parts; });
    ASSERT_NE(same, posed.steps.end());
    EXPECT_NEAR(dot(along, same->along), 1.0, 1e-9);
  }
}

INSTANTIATE_TEST_SUITE_P(Poses, WayInAnyPose, ::testing::Range(1, 7));

}  // namespace spotblue::way_in_test
