// What turns, on what it runs and what each bearing carries, on models of plain values worked by
// hand.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numbers>

#include "group/turning_shaft.hpp"
#include "support/thrown.hpp"

namespace spotblue::turning_test {

using test::iso;
using test::TurningShaft;
using ::testing::HasSubstr;

constexpr double kNear = 1e-9;

TEST(Running, TellsWhatTurnsHowFastAndWhatStands) {
  TurningShaft model;
  model.runs_in("Bush", 0.0, 20.0);
  const Group group = model.group();
  ASSERT_EQ(group.turning.size(), 1U);
  EXPECT_EQ(group.turning[0].part, model.shaft);
  EXPECT_EQ(group.turning[0].rpm, 60.0);
  EXPECT_EQ(group.bodies.at(1).rpm, std::nullopt);
  ASSERT_EQ(group.bearings.size(), 1U);
  EXPECT_EQ(group.bearings[0].rpm, 60.0);
  EXPECT_EQ(group.bearings[0].turning, model.shaft);
}

// 900 N in the middle of 0 to 100; bearings at 10 and 70: 900 x 20/60 = 300 and 600.
TEST(Running, ALoadInTheMiddleOfThePartIsCarriedByStaticsAndTheBasisSaysSo) {
  TurningShaft model;
  model.runs_in("First", 0.0, 20.0);
  model.runs_in("Second", 60.0, 80.0);
  const Group group = model.group();
  ASSERT_EQ(group.bearings.size(), 2U);
  EXPECT_NEAR(group.bearings[0].load_n.value(), 300.0, kNear);
  EXPECT_NEAR(group.bearings[1].load_n.value(), 600.0, kNear);
  EXPECT_NEAR(group.turning[0].span.value(), 60.0, kNear);
  EXPECT_NEAR(group.turning[0].load_at.value(), 50.0, kNear);
  EXPECT_THAT(text_of(group.bearings[0].how),
              HasSubstr("at the middle of Shaft, no place is given"));
}

// 900 N at 130, 60 past the second: 900 x 60/60 lifts the first, 1800 on the second.
TEST(Running, AnOverhungLoadLiftsTheFarBearing) {
  TurningShaft model;
  model.runs_in("First", 0.0, 20.0);
  model.runs_in("Second", 60.0, 80.0);
  model.bench.face(model.shaft, "end", 120.0, 1.0);
  model.bench.job.turning[0].at = "Shaft: end";
  model.bench.job.turning[0].out = Length::mm(10.0);
  const Group group = model.group();
  EXPECT_NEAR(group.bearings.at(0).load_n.value(), -900.0, kNear);
  EXPECT_NEAR(group.bearings.at(1).load_n.value(), 1800.0, kNear);
  EXPECT_THAT(text_of(group.turning[0].load_place), HasSubstr("10.000 mm past Shaft: end"));
}

// 900 N at 50 on a bearing in the middle of 0 to 20: 900 x 40 = 36,000 N mm.
TEST(Running, ALoneBearingCarriesAllAndTheMoment) {
  TurningShaft model;
  model.runs_in("Bush", 0.0, 20.0);
  const Bearing bearing = model.group().bearings.at(0);
  EXPECT_NEAR(bearing.load_n.value(), 900.0, kNear);
  EXPECT_NEAR(bearing.moment_nm.value(), 36.0, kNear);
  EXPECT_THAT(text_of(bearing.how), HasSubstr("the moment about it"));
}

TEST(Running, WhatThreeBearingsCarryIsNotKnownUnlessTheyShareByDeclaration) {
  TurningShaft model;
  model.runs_in("First", 0.0, 20.0);
  model.runs_in("Second", 40.0, 60.0);
  model.runs_in("Third", 80.0, 100.0);
  const Bearing bearing = model.group().bearings.at(1);
  EXPECT_FALSE(bearing.load_n);
  EXPECT_THAT(text_of(bearing.how), HasSubstr("3 bearings"));
  model.bench.job.turning[0].sharing = LoadSharing::evenly;
  EXPECT_NEAR(model.group().bearings.at(1).load_n.value(), 300.0, kNear);
  EXPECT_THAT(text_of(model.group().bearings.at(1).how), HasSubstr("shared evenly by 3 bearings"));
}

TEST(Running, TheTwoHalvesOfASplitBearingAreOneAndEachMayCarryAll) {
  TurningShaft model;
  model.runs_in("Lower", 40.0, 60.0);
  model.runs_in("Upper", 40.0, 60.0);
  const Group group = model.group();
  ASSERT_EQ(group.bearings.size(), 2U);
  EXPECT_NEAR(group.bearings[0].load_n.value(), 900.0, kNear);
  EXPECT_NEAR(group.bearings[1].load_n.value(), 900.0, kNear);
  EXPECT_THAT(text_of(group.bearings[0].how), HasSubstr("2 seats at one place"));
}

TEST(Running, WithoutALoadNothingIsCarriedThatIsKnown) {
  TurningShaft model(std::nullopt);
  model.runs_in("Bush", 0.0, 20.0);
  EXPECT_FALSE(model.group().bearings.at(0).load_n);
  EXPECT_THAT(text_of(model.group().bearings.at(0).how), HasSubstr("no load is given for Shaft"));
}

TEST(Running, AThinRingWhoseFitIsWantedIsABearing) {
  TurningShaft model;
  model.runs_in("Bush", 0.0, 20.0);
  model.runs_in("Washer", 22.0, 25.0);
  model.bench.want("Washer: bore", "Shaft: journal Washer", iso("H8/f7"));
  EXPECT_EQ(model.group().bearings.size(), 2U);
}

// One bearing 20 long with 0.03 lets the shaft go 0.015 x (70 + 90)/20 = 0.12 aside at 90.
TEST(Running, ALooseSecondBearingThatTheShaftReachesIsOne) {
  TurningShaft model;
  model.runs_in("Tight", 0.0, 20.0);
  model.runs_in("Worn", 80.0, 90.0, 20.19);
  EXPECT_EQ(model.group().bearings.size(), 2U);
}

// Of 0.03 to 0.05 the first lets the shaft go 0.0375 to 0.0625 aside at 55, where 0.03 to 0.04 is
// needed.
TEST(Running, ABearingThatTheShaftMayNotReachLeavesAllToTheOther) {
  TurningShaft model;
  model.bench.job.settings.default_uncertainty = Length::mm(0.005);
  model.runs_in("First", 20.0, 40.0, 20.04);
  model.runs_in("Second", 45.0, 55.0, 20.07);
  const Group group = model.group();
  ASSERT_EQ(group.bearings.size(), 2U);
  EXPECT_NEAR(group.bearings[0].load_n.value(), 900.0, kNear);
  EXPECT_NEAR(group.bearings[0].moment_nm.value(), 18.0, kNear);
  EXPECT_FALSE(group.bearings[1].load_n);
  EXPECT_EQ(group.bearings[1].certainty, Certainty::perhaps);
  EXPECT_THAT(text_of(group.bearings[1].how), HasSubstr("may keep the shaft off it"));
}

// A transition fit may also come out tight.
TEST(Running, AFitThatMayComeOutTightIsPerhapsABearing) {
  TurningShaft model;
  model.runs_in("Bush", 0.0, 20.0, 20.005);
  model.bench.want("Bush: bore", "Shaft: journal Bush", iso("H7/k6"));
  EXPECT_EQ(model.group().bearings.at(0).certainty, Certainty::perhaps);
}

// 157 degrees round: nothing holds the shaft down where it is lifted.
TEST(Running, ALiftedBearingThatIsOpenOnOneSideIsDoubted) {
  TurningShaft model;
  model.runs_in("Cradle", 0.0, 20.0);
  model.bench.look.seats.radial.back().coverage = 157.0 / 180.0 * std::numbers::pi;
  model.runs_in("Bush", 60.0, 80.0);
  EXPECT_TRUE(model.group().bearings.at(0).doubt.empty());  // 300 N, not lifted
  model.bench.face(model.shaft, "end", 120.0, 1.0);
  model.bench.job.turning[0].at = "Shaft: end";
  EXPECT_THAT(text_of(model.group().bearings.at(0).doubt),
              HasSubstr("157 deg round and is lifted"));
  EXPECT_TRUE(model.group().bearings.at(1).doubt.empty());
}

// What a pulley and a gear pull may be to either side, whichever way the sum of both goes.
TEST(Running, ABearingOpenOnOneSideUnderSeveralLoadsIsDoubted) {
  TurningShaft model;
  model.runs_in("Cradle", 0.0, 20.0);
  model.bench.look.seats.radial.back().coverage = 227.0 / 180.0 * std::numbers::pi;
  model.runs_in("Bush", 60.0, 80.0);
  const OccurrenceId idler = model.runs_in("Idler", 40.0, 60.0);
  model.bench.product(idler).box = {{-30, -30, 40}, {30, 30, 60}};
  model.bench.job.turning.push_back({"Idler", 100.0, Duty::continuous, 200.0, {}, 9});
  EXPECT_THAT(text_of(model.group().bearings.at(0).doubt), HasSubstr("from any side"));
  EXPECT_TRUE(model.group().bearings.at(1).doubt.empty());
}

// 900 N at 120 on bearings at 10, 50 and 90: a moment of 900 x 70 = 63,000 N mm is left over, which
// bearings that give alike would take by 63,000 x 40 / (40^2 + 40^2) = 787.5 each way.
TEST(Running, EvenSharesThatMomentsDoNotBalanceAreDoubted) {
  TurningShaft model;
  model.runs_in("First", 0.0, 20.0);
  model.runs_in("Second", 40.0, 60.0);
  model.runs_in("Third", 80.0, 100.0);
  model.bench.job.turning[0].sharing = LoadSharing::evenly;
  model.bench.face(model.shaft, "end", 120.0, 1.0);
  model.bench.job.turning[0].at = "Shaft: end";
  const Group group = model.group();
  EXPECT_NEAR(group.bearings.at(2).load_n.value(), 300.0, kNear);
  EXPECT_THAT(text_of(group.bearings.at(2).doubt), HasSubstr("63 N m"));
  EXPECT_THAT(text_of(group.bearings.at(2).doubt), HasSubstr("1.1 kN here"));
  EXPECT_THAT(text_of(group.bearings.at(0).doubt), HasSubstr("-488 N here"));
}

TEST(Running, EvenSharesOfALoadInTheMiddleAreTakenAsDeclared) {
  TurningShaft model;
  model.runs_in("First", 0.0, 20.0);
  model.runs_in("Second", 40.0, 60.0);
  model.runs_in("Third", 80.0, 100.0);
  model.bench.job.turning[0].sharing = LoadSharing::evenly;
  model.bench.face(model.shaft, "middle", 51.0, 1.0);
  model.bench.job.turning[0].at = "Shaft: middle";
  EXPECT_TRUE(model.group().bearings.at(2).doubt.empty());
}

/// A handle beside the line, on a pin of 12 of the shaft.
struct Crank : TurningShaft {
  OccurrenceId handle = bench.part("Handle");
  Crank() {
    runs_in("Bush", 0.0, 20.0);
    seat(bench.bore(handle, "bore", 12.05), bench.outside(shaft, "pin", 12.0), 60.0, 100.0, 1);
    bench.product(handle).cylinders.back().axis = {{40, 0, 80}, {0, 0, 1}};
    bench.product(handle).cylinders.back().intervals = {{-20.0, 20.0}};
  }
};

TEST(Running, WhatASeatBesideTheLineCarriesIsNotKnown) {
  const Crank model;
  const Group group = model.group();
  ASSERT_EQ(group.bearings.size(), 2U);
  EXPECT_NEAR(group.bearings[0].load_n.value(), 900.0, kNear);
  EXPECT_FALSE(group.bearings[1].load_n);
  EXPECT_THAT(text_of(group.bearings[1].how), HasSubstr("beside the line on which Shaft turns"));
}

// 900 N at 80: 900 x 70 = 63,000 N mm about the bush.
TEST(Running, ALoadThatComesInAtAHandleIsCarriedThereAndByTheBush) {
  Crank model;
  model.bench.job.turning[0].at = "Handle: bore";
  const Group group = model.group();
  EXPECT_NEAR(group.bearings.at(0).moment_nm.value(), 63.0, kNear);
  EXPECT_NEAR(group.bearings.at(1).load_n.value(), 900.0, kNear);
  EXPECT_THAT(text_of(group.bearings.at(1).how), HasSubstr("comes in here"));
}

// An idler with 200 N at 50 on a shaft with 900 N at 50 over bearings at 10 and 70: 1100 x 20/60.
TEST(Running, WhatRunsOnAPartThatTurnsPutsItsLoadOnItsBearingsToo) {
  TurningShaft model;
  model.runs_in("First", 0.0, 20.0);
  model.runs_in("Second", 60.0, 80.0);
  const OccurrenceId idler = model.runs_in("Idler", 40.0, 60.0);
  model.bench.product(idler).box = {{-30, -30, 40}, {30, 30, 60}};
  model.bench.job.turning.push_back({"Idler", 100.0, Duty::continuous, 200.0, {}, 9});
  const Group group = model.group();
  EXPECT_NEAR(group.bearings.at(0).load_n.value(), 1100.0 / 3.0, kNear);
  EXPECT_NEAR(group.bearings.at(1).load_n.value(), 2200.0 / 3.0, kNear);
  EXPECT_NEAR(group.bearings.at(2).load_n.value(), 200.0, kNear);
  EXPECT_NEAR(group.bearings.at(2).rpm, 160.0, kNear);
  EXPECT_THAT(text_of(group.bearings.at(0).how), HasSubstr("with what runs on it"));
}

TEST(Running, ALoadAtAFeatureThatIsNoneNamesTheLine) {
  TurningShaft model;
  model.runs_in("Bush", 0.0, 20.0);
  model.bench.job.turning[0].at = "Shaft: rim";
  const Error error = test::error_of([&] { return model.group(); });
  EXPECT_THAT(error.what(), HasSubstr("line 7"));
}

TEST(Running, AWayPastWhatIsNoFaceIsRefused) {
  TurningShaft model;
  model.runs_in("Bush", 0.0, 20.0);
  model.bench.job.turning[0].at = "Shaft: journal Bush";
  model.bench.job.turning[0].out = Length::mm(3.0);
  EXPECT_THAT(test::error_of([&] { return model.group(); }).what(), HasSubstr("no face"));
}

}  // namespace spotblue::turning_test
