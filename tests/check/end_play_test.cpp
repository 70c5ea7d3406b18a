// End play as geometry and lengths give it, numbers worked by hand.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "check/end_play_rig.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/report/sentence_text.hpp"
#include "support/thrown.hpp"

namespace spotblue::end_play_test {

using namespace test;
using ::testing::HasSubstr;

constexpr double kNear = 1e-9;

TEST(EndPlay, IsFoundWithWhatStopsItEachWay) {
  const Finding finding = wheel_on_stud().only();
  EXPECT_EQ(finding.id, "end-1");
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_NEAR(number(finding.found, "as_modelled_mm"), 0.3, kNear);
  EXPECT_NEAR(number(finding.found, "back_mm"), 0.0, kNear);
  EXPECT_NEAR(number(finding.found, "ahead_mm"), 0.3, kNear);
  EXPECT_EQ(worded(finding.found, "moves"), "Wheel; Bush");
  EXPECT_EQ(worded(finding.found, "stopped_back"), "Bush: face 40 @ 0 by Stud: face 40 @ 0");
  EXPECT_EQ(worded(finding.found, "stopped_ahead"), "Wheel: face 50 @ 40 by Keeper: face 36 @ 0");
}

TEST(EndPlay, ListsTheLoopLengthByLength) {
  const Finding finding = wheel_on_stud().only();
  EXPECT_THAT(worded(finding.found, "length_1"),
              HasSubstr("+ 42.8 mm Stud: face 40 @ 0 to Stud: face 20 @ 42.8"));
  EXPECT_THAT(worded(finding.found, "length_2"),
              HasSubstr("- 2.5 mm Bush: face 40 @ 0 to Bush: face 40 @ 2.5"));
  EXPECT_THAT(worded(finding.found, "length_3"),
              HasSubstr("- 40 mm Wheel: face 50 @ 0 to Wheel: face 50 @ 40"));
  EXPECT_EQ(worded(finding.found, "length_4"), "");
}

// Three found lengths of +- 0.002: 0.006 at worst, 0.002 root 3 by root-sum-square.
TEST(EndPlay, AddsTheUncertaintyOfPartsAsFound) {
  const Finding finding = wheel_on_stud().only();
  EXPECT_NEAR(number(finding.found, "end_play_min_mm"), 0.294, kNear);
  EXPECT_NEAR(number(finding.found, "end_play_max_mm"), 0.306, kNear);
  EXPECT_NEAR(number(finding.found, "root_sum_square_max_mm"), 0.3 + 0.002 * std::sqrt(3.0), kNear);
}

// Two parts that float one behind the other share one play and are told of once.
TEST(EndPlay, OfOneLoopIsToldOnce) {
  Rig rig;
  rig.add(named(turned_part({{0, -10}, {20, -10}, {20, 0}, {10, 0}, {10, 44.5}, {0, 44.5}}), "Stud",
                9e4),
          0.0);
  rig.add(named(ring_part(10.02, 25, 0, 42.5), "Wheel", 5e4), 0.0);
  rig.add(named(ring_part(10.5, 16, 0, 1.5), "Washer", 500), 42.6);
  rig.add(named(ring_part(4.2, 18, 0, 4), "Keeper", 1e3), 44.5);
  rig.job.fixed.push_back({"Keeper", "Stud", "screw", 0});
  EXPECT_EQ(rig.findings().size(), 1U);
}

// A washer that did not arrive takes its thickness off the play.
TEST(EndPlay, IsUndecidedWhereSomethingDidNotArrive) {
  Rig rig = wheel_on_stud();
  rig.want(0.5, 0.9);
  ASSERT_EQ(rig.only().outcome, Outcome::nonconforming);
  rig.look.model.not_compared = {{"product 'Washer'", "did not arrive"}};
  const Finding finding = rig.only();
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_EQ(worded(finding.found, "not_compared"), "product 'Washer': did not arrive");
}

TEST(EndPlay, IsUndecidedWhereAPartOnItsLineIsNotSound) {
  Rig rig = wheel_on_stud();
  rig.want(0.5, 0.9);
  for (std::size_t part = 0; part < rig.look.model.products.size(); ++part) {
    SCOPED_TRACE(part);
    Rig other = rig;
    other.look.model.products[part].unsound = "its solid is not closed";
    const Finding finding = other.only();
    EXPECT_EQ(finding.outcome, Outcome::undecided);
    EXPECT_THAT(worded(finding.found, "unsound"), HasSubstr("its solid is not closed"));
  }
}

TEST(EndPlay, LimitsOfALengthReplaceTheGeneralTolerance) {
  Rig rig = wheel_on_stud();
  rig.declare("Bush").state = PartState::to_make;
  PartLength flange{"Bush: face 40 @ 0", "Bush: face 40 @ 2.5", {}, {}, {}, 31};
  flange.limits = Limits{Length::mm(2.48), Length::mm(2.5)};
  rig.job.lengths.push_back(flange);
  rig.want(0.15, 0.4);
  const Finding finding = rig.only();
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.found, "end_play_min_mm"), 0.296, kNear);
  EXPECT_NEAR(number(finding.found, "end_play_max_mm"), 0.324, kNear);
  EXPECT_THAT(worded(finding.found, "length_2"), HasSubstr("line 31"));
}

TEST(EndPlay, AMeasuredLengthReplacesTheModels) {
  Rig rig = wheel_on_stud();
  rig.job.lengths.push_back(
      {"Wheel: face 50 @ 0", "Wheel: face 50 @ 40", Length::mm(40.05), Length::mm(0.01), {}, 0});
  const Finding finding = rig.only();
  EXPECT_NEAR(number(finding.found, "end_play_min_mm"), 0.25 - 0.014, kNear);
  EXPECT_NEAR(number(finding.found, "end_play_max_mm"), 0.25 + 0.014, kNear);
}

TEST(EndPlay, AMeasuredGapIsThePlayWhereTheOtherSideIsClosed) {
  Rig rig = wheel_on_stud();
  rig.job.measured_gaps.push_back(
      {"Wheel: face 50 @ 40", "Keeper: face 36 @ 0", Length::mm(0.28), Length::mm(0.01), 0});
  const Finding finding = rig.only();
  EXPECT_NEAR(number(finding.found, "end_play_min_mm"), 0.27, kNear);
  EXPECT_NEAR(number(finding.found, "end_play_max_mm"), 0.29, kNear);
  EXPECT_THAT(worded(finding.found, "length_1"), HasSubstr("measured"));
}

// A loose washer of 1.5 between wheel and keeper, the keeper that much farther out.
TEST(EndPlay, GoesOnThroughWhatFloatsBetween) {
  Rig rig;
  rig.add(named(turned_part({{0, -10}, {20, -10}, {20, 0}, {10, 0}, {10, 44.5}, {0, 44.5}}), "Stud",
                9e4),
          0.0);
  rig.add(named(ring_part(10.02, 25, 0, 42.5), "Wheel", 5e4), 0.0);
  rig.add(named(ring_part(10.5, 16, 0, 1.5), "Washer", 500), 42.6);
  rig.add(named(ring_part(4.2, 18, 0, 4), "Keeper", 1e3), 44.5);
  rig.job.fixed.push_back({"Keeper", "Stud", "screw", 0});
  rig.want(0.4, 0.6);
  const std::vector<Finding> all = rig.findings();
  ASSERT_FALSE(all.empty());
  EXPECT_EQ(all[0].outcome, Outcome::conforming);
  EXPECT_NEAR(number(all[0].found, "as_modelled_mm"), 0.5, kNear);
  EXPECT_THAT(worded(all[0].found, "length_3"), HasSubstr("- 1.5 mm Washer"));
}

// The wheel is heavier than all else, but it turns.
TEST(EndPlay, WhatTurnsDoesNotStandStill) {
  Rig rig = wheel_on_stud();
  rig.look.model.products[2].volume = 1e6;
  EXPECT_EQ(worded(rig.only().found, "stands"), "Wheel");
  rig.job.turning.push_back({"Wheel", 30.0, Duty::intermittent, {}, {}, 0});
  EXPECT_EQ(worded(rig.only().found, "stands"), "Stud");
}

// Bush and wheel held by a pin, no shoulder between them: where they stand was set at assembly.
TEST(EndPlay, AJointWithoutAStopIsAsItWasSet) {
  Rig rig;
  rig.add(stud(), 0.0);
  rig.add(named(ring_part(10.02, 14.98, 0, 41), "Bush", 1e4), 0.0);
  rig.add(named(ring_part(15, 25, 0, 40), "Wheel", 5e4), 2.5);
  rig.add(named(ring_part(4.2, 18, 0, 4), "Keeper", 1e3), 42.8);
  rig.job.fixed.push_back({"Keeper", "Stud", "screw", 0});
  rig.job.fixed.push_back({"Bush", "Wheel", "pin", 0});
  const Finding finding = rig.only();
  EXPECT_NEAR(number(finding.found, "as_modelled_mm"), 0.3, kNear);
  EXPECT_THAT(text_of(finding.basis), HasSubstr("as it was set"));
}

TEST(EndPlay, LengthsBetweenTwoPartsAreRefusedByLine) {
  Rig rig = wheel_on_stud();
  rig.job.lengths.push_back(
      {"Wheel: face 50 @ 0", "Bush: face 40 @ 0", Length::mm(2.5), {}, {}, 44});
  const Error error = test::error_of([&] { return rig.findings(); });
  EXPECT_THAT(error.what(), HasSubstr("line 44"));
}

}  // namespace spotblue::end_play_test
