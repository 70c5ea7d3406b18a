// What turns together and what moves together, on models of plain values.

#include "group/joints/groups.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "group/turning/turns.hpp"
#include "support/bench.hpp"
#include "support/thrown.hpp"

namespace spotblue::groups_test {

using test::Bench;
using test::iso;
using ::testing::HasSubstr;

Groups groups_of(const Bench& bench) { return find_groups(declare(bench.job, bench.look)); }

bool turn_together(const Groups& groups, std::size_t a, std::size_t b) {
  return groups.turns_with.at(a) == groups.turns_with.at(b);
}
bool move_together(const Groups& groups, std::size_t a, std::size_t b) {
  return groups.moves_with.at(a) == groups.moves_with.at(b);
}

TEST(Groups, APressFitHoldsBothWays) {
  Bench bench = test::wheel_on_bush(44.0, 44.05);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  const Groups groups = groups_of(bench);
  ASSERT_EQ(groups.joints.size(), 1U);
  EXPECT_EQ(groups.joints.front().kind, JointKind::press);
  EXPECT_THAT(groups.joints.front().why, HasSubstr("H7/s6"));
  EXPECT_TRUE(turn_together(groups, 0, 1));
  EXPECT_TRUE(move_together(groups, 0, 1));
}

// 44 H7/k6: -18 to +23 um. It may come out loose.
TEST(Groups, ATransitionFitHoldsNothing) {
  Bench bench = test::wheel_on_bush(44.0, 44.01);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/k6"));
  const Groups groups = groups_of(bench);
  EXPECT_FALSE(turn_together(groups, 0, 1));
  EXPECT_FALSE(move_together(groups, 0, 1));
}

TEST(Groups, SizesThatAlwaysInterfereHoldWhereNoFitIsDeclared) {
  Bench bench = test::wheel_on_bush(44.0, 44.03);
  bench.job.settings.default_uncertainty = Length::mm(0.01);
  EXPECT_TRUE(move_together(groups_of(bench), 0, 1));
}

TEST(Groups, SizesThatMayBeLooseHoldNothing) {
  Bench bench = test::wheel_on_bush(44.0, 44.03);
  bench.job.settings.default_uncertainty = Length::mm(0.02);
  EXPECT_FALSE(move_together(groups_of(bench), 0, 1));
}

TEST(Groups, AKeyTurnsBothPartsAndRidesInItsTighterKeyseat) {
  Bench bench;
  const OccurrenceId hub = bench.part("Hub");
  const OccurrenceId shaft = bench.part("Shaft");
  const OccurrenceId key = bench.part("Key");
  const FeatureRef width = bench.width(key, "width 8", Side::external, 8.0);
  bench.key(bench.width(hub, "slot 8.02", Side::internal, 8.02), width);
  bench.key(bench.width(shaft, "slot 7.98", Side::internal, 7.98), width);
  const Groups groups = groups_of(bench);
  EXPECT_TRUE(turn_together(groups, hub, shaft));
  EXPECT_FALSE(move_together(groups, hub, shaft));
  EXPECT_TRUE(move_together(groups, key, shaft));
}

// A nut, a washer and a plate on a stud whose shoulder comes against the plate; all along z.
struct StudAndNut {
  Bench bench;
  OccurrenceId stud = bench.part("Stud");
  OccurrenceId plate = bench.part("Plate");
  OccurrenceId washer = bench.part("Washer");
  OccurrenceId nut = bench.part("Nut");

  explicit StudAndNut(double washer_gap = 0.0) {
    Thread thread;
    thread.hole = bench.bore(nut, "bore 13.9", 13.9);
    thread.screw = bench.outside(stud, "outside 16", 16.0);
    thread.size = "M16";
    thread.axis = {{0, 0, 0}, {0, 0, 1}};
    bench.look.seats.threads.push_back(thread);
    touch(stud, plate, 30.0, 0.0);
    touch(plate, washer, 33.0, 0.0);
    touch(washer, nut, 36.0, washer_gap);
  }

 private:
  void touch(OccurrenceId low, OccurrenceId high, double z, double gap) {
    bench.gap(bench.face(low, "face 31", z, 1.0), bench.face(high, "face 29", z + gap, -1.0), gap);
    bench.look.seats.axial.back().axis = {{0, 0, z}, {0, 0, 1}};
  }
};

TEST(Groups, ANutClampsWhatLiesBetweenItAndTheShoulder) {
  const StudAndNut model;
  const Groups groups = groups_of(model.bench);
  EXPECT_TRUE(move_together(groups, model.stud, model.plate));
  EXPECT_TRUE(move_together(groups, model.stud, model.washer));
  EXPECT_TRUE(turn_together(groups, model.nut, model.plate));
}

TEST(Groups, NothingIsClampedWhereTheChainHasAGap) {
  const StudAndNut model(0.1);
  const Groups groups = groups_of(model.bench);
  EXPECT_FALSE(move_together(groups, model.stud, model.plate));
  EXPECT_TRUE(move_together(groups, model.stud, model.nut));
}

TEST(Groups, ADeclaredTouchCountsAsOne) {
  StudAndNut model(0.02);
  model.bench.job.axial.push_back({AxialWantKind::touch, "Washer: face 31", "Nut: face 29",
                                   Length::mm(-0.05), Length::mm(0.05), 0});
  EXPECT_TRUE(move_together(groups_of(model.bench), model.stud, model.plate));
}

// A set screw along x in a collar, its end on a shaft of 20 about z.
Bench set_screw(double end_x) {
  Bench bench;
  const OccurrenceId collar = bench.part("Collar");
  const OccurrenceId shaft = bench.part("Shaft");
  const OccurrenceId screw = bench.part("Screw");
  bench.seat(bench.bore(collar, "bore 20", 20.02), bench.outside(shaft, "outside 20", 20.0));
  bench.look.seats.radial.back().axis = {{0, 0, 0}, {0, 0, 1}};
  bench.look.seats.radial.back().from = -8.0;
  bench.look.seats.radial.back().to = 8.0;
  Thread thread;
  thread.hole = bench.bore(collar, "bore 5", 5.0);
  thread.screw = bench.outside(screw, "outside 6", 6.0);
  thread.size = "M6";
  thread.axis = {{15, 0, 2}, {1, 0, 0}};
  bench.look.seats.threads.push_back(thread);
  const FeatureRef end = bench.face(screw, "face 4", 0.0, 1.0);
  Plane& plane = bench.product(screw).planes[end.index];
  plane.at = {end_x, 0, 2};
  plane.normal = {-1, 0, 0};
  return bench;
}

TEST(Groups, ASetScrewHoldsTheShaftItReaches) {
  EXPECT_TRUE(move_together(groups_of(set_screw(10.0)), 0, 1));
  EXPECT_TRUE(turn_together(groups_of(set_screw(9.0)), 0, 1));
}

TEST(Groups, ASetScrewThatEndsShortHoldsNothing) {
  EXPECT_FALSE(move_together(groups_of(set_screw(10.2)), 0, 1));
}

TEST(Groups, ADeclaredJoinHoldsBothWays) {
  Bench bench = test::wheel_on_bush();
  bench.job.fixed.push_back({"Wheel", "Bush", "pin", 12});
  const Groups groups = groups_of(bench);
  EXPECT_TRUE(turn_together(groups, 0, 1));
  EXPECT_EQ(groups.joints.front().line, 12);
  EXPECT_EQ(groups.joints.front().why, "pin");
}

TEST(Turns, AreSharedByAllThatTurnTogether) {
  Bench bench = test::wheel_on_bush();
  bench.part("Bracket");
  bench.job.fixed.push_back({"Wheel", "Bush", "pin", 0});
  bench.job.turning.push_back({"Wheel", 60.0, Duty::continuous, 200.0, std::nullopt, 20});
  const DeclaredJob declared = declare(bench.job, bench.look);
  const Turns turns = find_turns(declared, find_groups(declared));
  ASSERT_TRUE(turns.of.at(1).has_value());
  EXPECT_EQ(turns.of[1]->rpm, 60.0);
  EXPECT_EQ(turns.of[1]->load_n, 200.0);
  EXPECT_FALSE(turns.of.at(2).has_value());
}

TEST(Turns, ThatDisagreeInOneGroupAreRefusedByLine) {
  Bench bench = test::wheel_on_bush();
  bench.job.fixed.push_back({"Wheel", "Bush", "pin", 0});
  bench.job.turning.push_back({"Wheel", 60.0, Duty::continuous, {}, {}, 20});
  bench.job.turning.push_back({"Bush", 61.0, Duty::continuous, {}, {}, 24});
  const DeclaredJob declared = declare(bench.job, bench.look);
  const Error error = test::error_of([&] { return find_turns(declared, find_groups(declared)); });
  EXPECT_THAT(error.what(), HasSubstr("line 24"));
  EXPECT_THAT(error.what(), HasSubstr("line 20"));
}

}  // namespace spotblue::groups_test
