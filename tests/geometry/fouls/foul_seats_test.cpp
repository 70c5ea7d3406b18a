// What seats account for and what they do not, on real solids with the seats the library finds; the
// Open CASCADE's own boolean judges the closed forms.
#include <gmock/gmock.h>

#include <cmath>
#include <numbers>

#include "geometry/fouls/foul_solids.hpp"
#include "geometry/fouls/seat_foul.hpp"
#include "spotblue/geometry/foul.hpp"
#include "support/value_parts.hpp"

namespace spotblue::foul_seats_test {

using test::bar_solid;
using test::block_solid;
using test::key_solid;
using test::rotated;
using test::shifted;

constexpr double kPi = std::numbers::pi;

struct Placed {
  TopoDS_Shape a, b;
  Frame b_in_a;
};

struct Looked {
  Model model;
  Seats seats;
  FoulReport report;
};

Looked looked_at(const Placed& pair, const Frame& world = {}, const ReadLimits& limits = {}) {
  Looked result;
  result.model = test::solid_model({{pair.a, world}, {pair.b, compose(world, pair.b_in_a)}});
  result.seats = find_seats(result.model, {});
  result.report = find_fouls(result.model, result.seats, {}, limits);
  return result;
}

double truth(const Placed& pair) {
  return test::shared_volume(pair.a, test::moved_solid(pair.b, pair.b_in_a));
}

Frame some_pose() { return compose(shifted(120, -40, 15), rotated(unit({1, -2, 2}), 2.1)); }

Frame mirrored_pose() {
  return compose(some_pose(), {{{{-1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}}}});
}

TEST(Crescent, AreaAgreesWithTheSegmentFormula) {
  // Two unit circles a radius apart share 2 pi/3 - sqrt(3)/2 (plane geometry, derived by hand).
  EXPECT_NEAR(proof::crescent_area(1, 1, 1), kPi - (2 * kPi / 3 - std::sqrt(3.0) / 2), 1e-12);
  EXPECT_EQ(proof::crescent_area(10, 9, 1), 0.0);
  EXPECT_NEAR(proof::crescent_area(9, 10, 0.5), kPi * 19.0, 1e-9);
  EXPECT_NEAR(proof::crescent_area(1, 2, 4), kPi * 4.0, 1e-12);
}

TEST(FoulSeats, AnOffAxisShaftIsReportedWithTheVolumeTheBooleanFinds) {
  const Placed pair{bar_solid(15, 30, 0, 40), bar_solid(0, 14.95, -10, 50), shifted(0.2, 0.1, 0)};
  for (const Frame& world : {Frame{}, some_pose(), mirrored_pose()}) {
    const Looked looked = looked_at(pair, world);
    ASSERT_EQ(looked.report.found.size(), 1U);
    const Foul& foul = looked.report.found.front();
    EXPECT_EQ(foul.cause, "off axis");
    EXPECT_NEAR(foul.volume, truth(pair), 1e-3 * foul.volume);
    EXPECT_NEAR(foul.depth, std::hypot(0.2, 0.1) - 0.05, 1e-9);
    EXPECT_EQ(looked.report.effort.exact_pairs, 0U);
    // The point lies in the shaft and out of the bore.
    const Point in_a = place_point(inverse(world), foul.at.value());
    EXPECT_GT(std::hypot(in_a.x, in_a.y), 15.0);
    EXPECT_LT(std::hypot(in_a.x - 0.2, in_a.y - 0.1), 14.95);
  }
}

TEST(FoulSeats, ATiltedShaftIsReportedWithTheVolumeTheBooleanFinds) {
  const Placed pair{bar_solid(15, 30, 0, 40), bar_solid(0, 14.95, -30, 30),
                    compose(shifted(0, 0, 20), rotated({0, 1, 0}, 0.006))};
  const Looked looked = looked_at(pair);
  ASSERT_FALSE(looked.report.found.empty());
  double volume = 0.0;
  for (const Foul& foul : looked.report.found) {
    EXPECT_EQ(foul.cause, "off axis");
    volume += foul.volume;
  }
  EXPECT_NEAR(volume, truth(pair), 0.01 * volume);
}

TEST(FoulSeats, AShaftAskewFoulsAtEachEndOfItsBoreInARowOfItsOwn) {
  const Placed pair{bar_solid(15, 30, 0, 40), bar_solid(0, 14.95, -30, 30),
                    compose(shifted(0, 0, 20), rotated({0, 1, 0}, 0.006))};
  const Looked looked = looked_at(pair);
  ASSERT_EQ(looked.report.found.size(), 2U);
  const Point one = looked.report.found[0].at.value();
  const Point other = looked.report.found[1].at.value();
  EXPECT_LT(one.x * other.x, 0.0);
  EXPECT_LT((one.z - 20.0) * (other.z - 20.0), 0.0);
  EXPECT_NEAR(looked.report.found[0].volume, looked.report.found[1].volume, 1e-3);
}

TEST(FoulSeats, APressFitIsNoFoulAndNeedsNoBoolean) {
  for (const double over : {0.002, 0.01, 0.03, 0.07}) {
    const Placed pair{
        bar_solid(15, 30, 0, 40),
        test::turned_solid(
            {{10, 0}, {14, 0}, {15 + over, 2}, {15 + over, 40}, {20, 40}, {20, 45}, {10, 45}}),
        {}};
    const Looked looked = looked_at(pair, some_pose());
    EXPECT_EQ(looked.seats.radial.size(), 1U);
    EXPECT_TRUE(looked.report.found.empty());
    EXPECT_EQ(looked.report.effort.exact_pairs, 0U);
  }
}

TEST(FoulSeats, AScrewInATappedHoleIsNoFoul) {
  const TopoDS_Shape block =
      test::cut_solid(block_solid({-20, -20, 0}, {20, 20, 30}), bar_solid(0, 3.4, 5, 31));
  const Placed pair{block, bar_solid(0, 4, 8, 60), {}};
  const Looked looked = looked_at(pair, some_pose());
  EXPECT_EQ(looked.seats.threads.size(), 1U);
  EXPECT_TRUE(looked.report.found.empty());
  EXPECT_EQ(looked.report.effort.exact_pairs, 0U);
}

TEST(FoulSeats, AScrewLongerThanItsBlindHoleIsAFoul) {
  const TopoDS_Shape block =
      test::cut_solid(block_solid({-20, -20, 0}, {20, 20, 30}), bar_solid(0, 3.4, 5, 31));
  const Placed pair{block, bar_solid(0, 4, 4, 60), {}};
  const Looked looked = looked_at(pair);
  ASSERT_FALSE(looked.report.found.empty());
  double deepest = 0.0;
  for (const Foul& foul : looked.report.found) {
    deepest = std::max(deepest, foul.depth);
    EXPECT_TRUE(foul.exact);
  }
  EXPECT_NEAR(deepest, 1.0, 1e-6);
}

TEST(FoulSeats, AShoulderThatFoulsIsReportedOnce) {
  const Placed pair{
      bar_solid(10.1, 30, 0, 40),
      test::turned_solid({{0, -20}, {10, -20}, {10, 40}, {16, 40}, {16, 50}, {0, 50}}),
      shifted(0, 0, -0.25)};
  const Looked looked = looked_at(pair, some_pose());
  ASSERT_EQ(looked.report.found.size(), 1U);
  const Foul& foul = looked.report.found.front();
  EXPECT_EQ(foul.cause, "faces overlap");
  EXPECT_NEAR(foul.depth, 0.25, 1e-9);
  EXPECT_NEAR(foul.volume, kPi * (16 * 16 - 10.1 * 10.1) * 0.25, 1e-6);
  const Point in_a = place_point(inverse(some_pose()), foul.at.value());
  EXPECT_GT(in_a.z, 39.75);
  EXPECT_LT(in_a.z, 40.0);
  EXPECT_GT(std::hypot(in_a.x, in_a.y), 10.1);
  EXPECT_LT(std::hypot(in_a.x, in_a.y), 16.0);
}

/// A bar along z with a keyseat whose floor is 7 mm from the axis, and the key in it.
Placed keyed(double width, bool round) {
  const Frame place{{{{0, 0, 1, 7}, {0, 1, 0, 0}, {-1, 0, 0, 30}}}};
  const TopoDS_Shape seat = test::moved_solid(key_solid(24, 6, 20, round), place);
  return {test::cut_solid(bar_solid(0, 10, 0, 60), seat), key_solid(23.9, width, 6, round), place};
}

TEST(FoulSeats, ASquareKeyInItsKeyseatNeedsNoBoolean) {
  for (const double width : {5.98, 6.0, 6.02}) {
    const Looked looked = looked_at(keyed(width, false), some_pose());
    EXPECT_TRUE(looked.report.found.empty()) << width;
    EXPECT_EQ(looked.report.effort.exact_pairs, 0U) << width;
  }
}

TEST(FoulSeats, ARoundEndedKeyIsNoFoul) {
  const Looked looked = looked_at(keyed(5.98, true), some_pose());
  EXPECT_TRUE(looked.report.found.empty());
}

TEST(FoulSeats, AKeyTooLongForItsKeyseatIsAFoul) {
  Placed pair = keyed(6.0, false);
  pair.b = key_solid(25, 6, 6, false);
  const Looked looked = looked_at(pair);
  ASSERT_FALSE(looked.report.found.empty());
  double volume = 0.0;
  for (const Foul& foul : looked.report.found) {
    volume += foul.volume;
  }
  EXPECT_NEAR(volume, truth(pair), 1e-3 * volume);
}

TEST(FoulSeats, ACrossHoleInAPressedBushNeedsNoBoolean) {
  const Frame across{{{{0, 0, 1, 0}, {0, 1, 0, 0}, {-1, 0, 0, 20}}}};
  const TopoDS_Shape oil = test::moved_solid(bar_solid(0, 2, 0, 60), across);
  const Placed pair{test::cut_solid(bar_solid(15, 30, 0, 40), oil),
                    test::cut_solid(bar_solid(12, 15.02, 0, 40), oil),
                    {}};
  const Looked looked = looked_at(pair, some_pose());
  EXPECT_TRUE(looked.report.found.empty());
  EXPECT_EQ(looked.report.effort.exact_pairs, 0U);
}

TEST(FoulSeats, APairTheBooleanHasNoTimeForIsUndecided) {
  const Placed pair{block_solid({0, 0, 0}, {10, 10, 10}), block_solid({5, 5, 5}, {15, 15, 15}), {}};
  ReadLimits hurried;
  hurried.seconds = 1e-4;
  const Looked looked = looked_at(pair, {}, hurried);
  ASSERT_EQ(looked.report.found.size(), 1U);
  EXPECT_FALSE(looked.report.found.front().exact);
  EXPECT_THAT(looked.report.found.front().cause, testing::StartsWith("undecided: "));
  EXPECT_EQ(looked.report.notes.size(), 1U);
}

}  // namespace spotblue::foul_seats_test
