// End play against what is wanted, at the bench and warm, numbers worked by hand.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check/end_play_rig.hpp"
#include "spotblue/report/sentence_text.hpp"

namespace spotblue::end_play_judge_test {

using namespace test;
using ::testing::HasSubstr;

constexpr double kNear = 1e-9;

TEST(EndPlay, IsJudgedByTheWorstCase) {
  Rig rig = wheel_on_stud();
  rig.want(0.2, 0.4);
  EXPECT_EQ(rig.only().outcome, Outcome::conforming);
  EXPECT_NEAR(number(rig.only().margin, "end_play_mm"), 0.094, kNear);
  rig.job.end_play.front().gap = {Length::mm(0.4), Length::mm(0.6)};
  EXPECT_EQ(rig.only().outcome, Outcome::nonconforming);
  rig.job.end_play.front().gap = {Length::mm(0.296), Length::mm(0.6)};
  EXPECT_EQ(rig.only().outcome, Outcome::undecided);
}

// 2.5 to make: ISO 2768-1 m gives +- 0.1, so the play is 0.3 +- 0.104: 0.196 to 0.404. The flange
// may be 2.804 - 0.4 = 2.404 to 2.796 - 0.15 = 2.646.
TEST(EndPlay, ALengthToMakeHasTheGeneralTolerance) {
  Rig rig = wheel_on_stud();
  rig.declare("Bush").state = PartState::to_make;
  rig.want(0.15, 0.4);
  const Finding finding = rig.only();
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_NEAR(number(finding.found, "end_play_min_mm"), 0.196, kNear);
  EXPECT_NEAR(number(finding.found, "end_play_max_mm"), 0.404, kNear);
  EXPECT_THAT(worded(finding.found, "length_2"), HasSubstr("ISO 2768-1 m"));
  EXPECT_THAT(text_of(finding.basis), HasSubstr("ISO 2768-1:1989, table 1"));
  EXPECT_THAT(text_of(finding.advice),
              HasSubstr("make Bush: face 40 @ 0 to Bush: face 40 @ 2.5 2.404 to 2.646 mm"));
}

// Root-sum-square: 0.1000 about 0.3, so 0.4000 is inside 0.402; the worst, 0.404, is not.
TEST(EndPlay, MetByMostSetsOfPartsButNotTheWorstIsUndecided) {
  Rig rig = wheel_on_stud();
  rig.declare("Bush").state = PartState::to_make;
  rig.want(0.15, 0.402);
  const Finding finding = rig.only();
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("most sets of parts would do"));
  EXPECT_THAT(text_of(finding.advice), HasSubstr("Bush"));
}

TEST(EndPlay, AWantBetweenTheTwoFacesOfAStopIsJudgedByTheLoop) {
  Rig rig = wheel_on_stud();
  rig.job.axial.push_back({AxialWantKind::end_play, "Wheel: face 50 @ 40", "Keeper: face 36 @ 0",
                           Length::mm(0.15), Length::mm(0.4), 12});
  const Finding finding = rig.only();
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_THAT(text_of(finding.basis), HasSubstr("line 12"));
}

// All of one steel, 60 K warmer: the play grows by 0.3 x 11.7e-6 x 60, the rest cancels. The bush
// of bronze (18 against 11.7) takes up 2.5 x 6.3e-6 x 60.
TEST(EndPlay, GrowsWarmByWhatTheMaterialsDo) {
  Rig rig = wheel_on_stud();
  rig.job.conditions.running_c = 80.0;
  rig.job.materials.push_back({"own steel", 210.0, 0.3, 11.7, {}, {}, 0});
  rig.job.materials.push_back({"own bronze", 100.0, 0.34, 18.0, {}, {}, 0});
  for (const char* part : {"Stud", "Wheel", "Keeper"}) {
    rig.declare(part, "own steel");
  }
  rig.declare("Bush", "own bronze");
  rig.job.settings.default_uncertainty = Length();
  const Finding finding = rig.only();
  const double expected = 0.3 + 0.3 * 11.7e-6 * 60.0 - 2.5 * 6.3e-6 * 60.0;
  EXPECT_NEAR(number(finding.found, "warm_min_mm"), expected, kNear);
  EXPECT_NEAR(number(finding.found, "warm_max_mm"), expected, kNear);
}

TEST(EndPlay, WithoutAMaterialNothingIsProvedOfAWarmMachine) {
  Rig rig = wheel_on_stud();
  rig.job.conditions.running_c = 80.0;
  rig.want(0.2, 0.4);
  const Finding finding = rig.only();
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(worded(finding.found, "warm"), HasSubstr("Stud"));
}

// The wheel 120 K warmer than the stud: 40 x 11.7e-6 x 120 = 0.056 of 0.03 play.
TEST(EndPlay, ThatClosesWhenWarmDoesNotConform) {
  Rig rig = wheel_on_stud();
  rig.job.materials.push_back({"own steel", 210.0, 0.3, 11.7, {}, {}, 0});
  for (const char* part : {"Stud", "Bush", "Keeper"}) {
    rig.declare(part, "own steel");
  }
  rig.declare("Wheel", "own steel").running_c = 140.0;
  rig.job.lengths.push_back(
      {"Wheel: face 50 @ 0", "Wheel: face 50 @ 40", Length::mm(40.27), Length::mm(0.001), {}, 0});
  rig.want(0.0, 0.4);
  const Finding finding = rig.only();
  EXPECT_EQ(finding.outcome, Outcome::nonconforming);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("binds when warm"));
  EXPECT_THAT(text_of(finding.caution), HasSubstr("local rules"));
}

TEST(EndPlay, WantedAlikeOfThePartAndOfItsFacesIsJudgedOnce) {
  Rig rig = wheel_on_stud();
  rig.want(0.15, 0.4);
  AxialWant faces{AxialWantKind::end_play, "Wheel: face 50 @ 40", "Keeper: face 36 @ 0",
                  Length::mm(0.15),        Length::mm(0.4),       12};
  rig.job.axial.push_back(faces);
  EXPECT_EQ(rig.findings().size(), 1U);
  rig.job.axial.front().greatest = Length::mm(0.2);
  EXPECT_EQ(rig.findings().size(), 2U);
}

// What a cone stops is not seen: nothing is proved of it.
TEST(EndPlay, OfAPartSeatedOnAConeStaysUndecided) {
  Rig rig;
  rig.add(named(turned_part({{0, -10}, {20, -10}, {20, 0}, {12, 0}, {10, 42.8}, {0, 42.8}}), "Stud",
                9e4),
          0.0);
  rig.add(named(turned_part({{12.05, 0}, {25, 0}, {25, 42.5}, {10.05, 42.5}}), "Wheel", 5e4), 0.0);
  rig.add(named(ring_part(4.2, 18, 0, 4), "Keeper", 1e3), 42.8);
  rig.job.fixed.push_back({"Keeper", "Stud", "screw", 0});
  rig.want(0.2, 0.4);
  const Finding finding = rig.only();
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(worded(finding.found, "not_seen"), HasSubstr("cone"));
}

TEST(EndPlay, OfAPartThatNothingStopsOneWayStaysUndecided) {
  Rig rig;
  rig.add(stud(), 0.0);
  rig.add(named(ring_part(10.02, 25, 0, 40), "Wheel", 5e4), 0.0);
  rig.want(0.1, 0.3);
  const Finding finding = rig.only();
  EXPECT_EQ(finding.outcome, Outcome::undecided);
  EXPECT_THAT(text_of(finding.advice), HasSubstr("one way"));
  EXPECT_THAT(text_of(finding.advice), HasSubstr("cones"));
}

TEST(EndPlay, OfWhatStandsStillIsNone) {
  Rig rig = wheel_on_stud();
  rig.want(0.1, 0.3, "Keeper");
  const std::vector<Finding> all = rig.findings();
  ASSERT_EQ(all.size(), 2U);
  EXPECT_THAT(text_of(all[1].advice), HasSubstr("stand still"));
}

TEST(EndPlay, ChangesNoOutcomeInInches) {
  Rig rig = wheel_on_stud();
  rig.want(0.15, 0.4);
  const Finding metric = rig.only();
  rig.job.unit = LengthUnit::inch;
  const Finding inch = rig.only();
  EXPECT_EQ(metric.outcome, inch.outcome);
  EXPECT_EQ(number(metric.found, "end_play_min_mm"), number(inch.found, "end_play_min_mm"));
}

}  // namespace spotblue::end_play_judge_test
