// What carries no load though it has clearance on a part that turns, on models of plain values.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "group/turning_shaft.hpp"

namespace spotblue::no_bearing_test {

using test::TurningShaft;

// Pinned across to the shaft, the collar's clearance seat turns with it.
TEST(NoBearing, IsTheClearanceSeatOfAPinnedPart) {
  TurningShaft model;
  model.runs_in("Bush", 0.0, 20.0);
  const OccurrenceId collar = model.runs_in("Collar", 40.0, 60.0);
  const FeatureRef pin = model.bench.outside(model.bench.part("Pin"), "outside", 5.0);
  model.seat(model.bench.bore(collar, "pin hole", 5.02), pin, 0.0, 5.0, 1).axis.along = {1, 0, 0};
  model.seat(model.bench.bore(model.shaft, "pin hole", 5.02), pin, 0.0, 5.0, 1).axis.along = {1, 0,
                                                                                              0};
  EXPECT_THAT(model.holes(), testing::ElementsAre("Bush"));
}

TEST(NoBearing, IsTheClearanceSeatOfAKeyedPart) {
  TurningShaft model;
  model.runs_in("Bush", 0.0, 20.0);
  const OccurrenceId gear = model.runs_in("Gear", 40.0, 60.0);
  const FeatureRef key = model.bench.width(model.bench.part("Key"), "width", Side::external, 6.0);
  model.bench.key(model.bench.width(gear, "keyseat", Side::internal, 6.02), key);
  model.bench.key(model.bench.width(model.shaft, "keyseat", Side::internal, 6.0), key);
  EXPECT_THAT(model.holes(), testing::ElementsAre("Bush"));
}

// A dowel of 6 in the face of a flange that turns with the shaft of 20.
TEST(NoBearing, IsADowelInAPartThatTurns) {
  TurningShaft model;
  model.runs_in("Bush", 0.0, 20.0);
  const FeatureRef dowel = model.bench.outside(model.bench.part("Dowel"), "outside", 6.0);
  model.seat(model.bench.bore(model.shaft, "dowel hole", 6.02), dowel, 90.0, 100.0, 1);
  EXPECT_THAT(model.holes(), testing::ElementsAre("Bush"));
}

// The lip of a seal, drawn 0.02 smaller than the shaft, the squeeze allowed.
TEST(NoBearing, IsASealThatIsSqueezed) {
  TurningShaft model;
  model.runs_in("Bush", 0.0, 20.0);
  model.runs_in("Seal", 40.0, 44.0, 19.98);
  model.bench.job.allowed.push_back({"Shaft", "Seal", "the lip of a seal", Length::mm(0.5), 3});
  EXPECT_THAT(model.holes(), testing::ElementsAre("Bush"));
}

TEST(NoBearing, IsAFeltRing) {
  TurningShaft model;
  model.runs_in("Bush", 0.0, 20.0);
  model.runs_in("Felt", 40.0, 60.0, 20.15);
  model.bench.declare("Felt", PartState::as_found, Drawn::at_the_size_wanted).material = "felt";
  EXPECT_THAT(model.holes(), testing::ElementsAre("Bush"));
}

// 0.15 on 20 is less than a hundredth. Two bearings with 0.03 let the shaft go 0.015 aside between
// them, less than 0.075.
TEST(NoBearing, IsASealHoleThatTheBearingsKeepTheShaftOff) {
  TurningShaft model;
  model.runs_in("First", 0.0, 20.0);
  model.runs_in("Second", 80.0, 100.0);
  model.runs_in("Seal housing", 40.0, 60.0, 20.15);
  EXPECT_THAT(model.holes(), testing::ElementsAre("First", "Second"));
}

// 0.5 on 20 is a hundredth and more.
TEST(NoBearing, IsTheHoleOfACover) {
  TurningShaft model;
  model.runs_in("Bush", 0.0, 20.0);
  model.runs_in("Cover", 22.0, 26.0, 20.5);
  EXPECT_THAT(model.holes(), testing::ElementsAre("Bush"));
}

// The same hole with its fit declared is no bearing either, though 0.1 to 0.6 could be one.
TEST(NoBearing, IsACoverHoleWhoseClearanceIsDeclared) {
  TurningShaft model;
  model.runs_in("Cover", 2.0, 5.0, 20.4);
  model.runs_in("Bush", 20.0, 40.0, 20.04);
  model.bench.want("Cover: bore", "Shaft: journal Cover",
                   ClearanceLimits{Length::mm(0.1), Length::mm(0.6)});
  EXPECT_THAT(model.holes(), testing::ElementsAre("Bush"));
  EXPECT_NEAR(model.group().bearings[0].load_n.value(), 900.0, 1e-9);
}

// 3 long on 20, held by nothing.
TEST(NoBearing, IsALooseWasher) {
  TurningShaft model;
  model.runs_in("Bush", 0.0, 20.0);
  model.runs_in("Washer", 22.0, 25.0);
  EXPECT_THAT(model.holes(), testing::ElementsAre("Bush"));
}

TEST(NoBearing, IsAWasherOnAScrewThatTurnsWithThePart) {
  TurningShaft model;
  model.runs_in("Bush", 0.0, 20.0);
  const OccurrenceId screw = model.bench.part("Screw");
  Thread thread;
  thread.hole = model.bench.bore(model.shaft, "tapped", 6.8);
  thread.screw = model.bench.outside(screw, "outside", 8.0);
  thread.size = "M8";
  thread.axis = {{0, 0, 100}, {0, 0, 1}};
  model.bench.look.seats.threads.push_back(thread);
  const OccurrenceId washer = model.bench.part("Washer");
  model.seat(model.bench.bore(washer, "bore", 8.05), model.bench.outside(screw, "shank", 8.0),
             100.0, 101.6);
  EXPECT_THAT(model.holes(), testing::ElementsAre("Bush"));
}

}  // namespace spotblue::no_bearing_test
