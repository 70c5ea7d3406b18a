// What each pair is to each other, on models of plain values, worked by hand.

#include "group/joints/joints.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <utility>

#include "group/joints/groups.hpp"
#include "group/seat_on.hpp"
#include "spotblue/base/angle.hpp"

namespace spotblue::joints_test {

using test::Bench;
using test::iso;
using test::kX;
using test::kZ;
using test::seat_on;
using ::testing::HasSubstr;

std::vector<Joint> joints_in(const Bench& bench) {
  return joints_of(declare(bench.job, bench.look));
}

// The one joint of two parts; the test fails where there is none.
Joint joint_between(const Bench& bench, OccurrenceId a, OccurrenceId b) {
  for (const Joint& joint : joints_in(bench)) {
    if (std::minmax(joint.a, joint.b) == std::minmax(a, b)) {
      return joint;
    }
  }
  ADD_FAILURE() << "no joint";
  return {};
}

bool one_body(const Bench& bench, OccurrenceId a, OccurrenceId b) {
  const Groups groups = find_groups(declare(bench.job, bench.look));
  return groups.turns_with.at(a) == groups.turns_with.at(b);
}

TEST(Joints, ATransitionFitIsPerhapsPressedAndHoldsNothing) {
  Bench bench = test::wheel_on_bush(44.0, 44.01);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/k6"));
  const Joint joint = joint_between(bench, OccurrenceId(0), OccurrenceId(1));
  EXPECT_EQ(joint.kind, JointKind::press);
  EXPECT_EQ(joint.certainty, Certainty::perhaps);
  EXPECT_FALSE(joint.turning || joint.along);
}

TEST(Joints, AClearanceFitIsLoose) {
  Bench bench = test::wheel_on_bush(44.03, 44.0);
  const Joint joint = joint_between(bench, OccurrenceId(0), OccurrenceId(1));
  EXPECT_EQ(joint.kind, JointKind::loose);
  EXPECT_EQ(joint.certainty, Certainty::certain);
  EXPECT_EQ(joint.by.size(), 2U);
}

TEST(Joints, OfOnePairAreOneRowThatNamesAllThatHoldsIt) {
  Bench bench = test::wheel_on_bush(44.0, 44.05);
  bench.want("Wheel: bore 44", "Bush: outside 44", iso("H7/s6"));
  bench.job.fixed.push_back({"Bush", "Wheel", "pin", 12});
  const std::vector<Joint> joints = joints_in(bench);
  ASSERT_EQ(joints.size(), 1U);
  EXPECT_EQ(joints[0].kind, JointKind::declared);
  EXPECT_EQ(joints[0].line, 12);
  EXPECT_THAT(joints[0].why, HasSubstr("pin"));
  EXPECT_THAT(joints[0].why, HasSubstr("H7/s6"));
}

// A seal drawn 0.02 larger than its bore, the squeeze declared: it turns with nothing.
TEST(Joints, ASqueezeThatIsAllowedIsNoPressFit) {
  Bench bench = test::wheel_on_bush(44.0, 44.02);
  bench.job.allowed.push_back({"Wheel", "Bush", "the lip of a seal", Length::mm(0.5), 3});
  EXPECT_EQ(joint_between(bench, OccurrenceId(0), OccurrenceId(1)).kind, JointKind::loose);
  EXPECT_FALSE(one_body(bench, OccurrenceId(0), OccurrenceId(1)));
}

/// A hub on a shaft of 30 about z with a pin of 6 through both along x.
struct CrossPinned {
  Bench bench;
  OccurrenceId hub = bench.part("Hub");
  OccurrenceId shaft = bench.part("Shaft");
  OccurrenceId pin = bench.part("Pin");

  explicit CrossPinned(Direction along = kX, double pin_hole = 6.02) {
    seat_on(bench, bench.bore(hub, "bore 30", 30.02), bench.outside(shaft, "outside 30", 30.0), 0,
            {0, 0, 0}, kZ);
    const FeatureRef outside = bench.outside(pin, "outside 6", 6.0);
    seat_on(bench, bench.bore(hub, "bore 6", pin_hole), outside, 1, {0, 12, 0}, along);
    seat_on(bench, bench.bore(shaft, "bore 6", pin_hole), outside, 1, {0, 12, 0}, along);
  }
};

TEST(Joints, ACrossPinHoldsHubAndShaftBothWays) {
  const CrossPinned model;
  const Joint joint = joint_between(model.bench, model.hub, model.shaft);
  EXPECT_EQ(joint.kind, JointKind::pin);
  EXPECT_TRUE(joint.turning && joint.along);
  EXPECT_THAT(joint.why, HasSubstr("pinned by Pin"));
  EXPECT_TRUE(one_body(model.bench, model.pin, model.shaft));
}

TEST(Joints, APinBesideTheLineHoldsAgainstTurningOnly) {
  const CrossPinned model(kZ);
  const Joint joint = joint_between(model.bench, model.hub, model.shaft);
  EXPECT_EQ(joint.kind, JointKind::pin);
  EXPECT_TRUE(joint.turning);
  EXPECT_FALSE(joint.along);
}

TEST(Joints, APinThatGoesThroughTheHubAloneHoldsNoShaft) {
  CrossPinned model;
  model.bench.look.seats.radial.pop_back();
  EXPECT_FALSE(one_body(model.bench, model.hub, model.shaft));
}

TEST(Joints, AShaftThatTurnsThroughTwoPartsPinsNeither) {
  CrossPinned model;
  model.bench.job.turning.push_back({"Pin", 60.0, Duty::continuous, {}, {}, 0});
  EXPECT_FALSE(one_body(model.bench, model.hub, model.shaft));
}

/// A flange of 60 in a housing about z, with a dowel of 8 loose in a hole of it beside the line.
Bench dowel_in_flange(double volume_of_dowel = 1.0) {
  Bench bench;
  const OccurrenceId housing = bench.part("Housing");
  const OccurrenceId flange = bench.part("Flange");
  const OccurrenceId dowel = bench.part("Dowel");
  seat_on(bench, bench.bore(housing, "bore 60", 60.03), bench.outside(flange, "outside 60", 60.0),
          0, {0, 0, 0}, kZ);
  seat_on(bench, bench.bore(flange, "bore 8", 8.02), bench.outside(dowel, "outside 8", 8.0), 1,
          {20, 0, 0}, kZ);
  bench.product(flange).volume = 50.0;
  bench.product(dowel).volume = volume_of_dowel;
  return bench;
}

TEST(Joints, ADowelBesideTheLineGoesWithThePartItIsIn) {
  const Bench bench = dowel_in_flange();
  EXPECT_EQ(joint_between(bench, OccurrenceId(1), OccurrenceId(2)).kind, JointKind::pin);
  EXPECT_TRUE(one_body(bench, OccurrenceId(1), OccurrenceId(2)));
  EXPECT_FALSE(one_body(bench, OccurrenceId(0), OccurrenceId(1)));
}

TEST(Joints, AHeavierPartInAHoleBesideTheLineIsNoDowel) {
  const Bench bench = dowel_in_flange(500.0);
  EXPECT_FALSE(one_body(bench, OccurrenceId(1), OccurrenceId(2)));
}

/// A ring `wide` long between the walls of a groove in a shaft of 40.
Bench ring_in_groove(double wide, double wall_gap = 0.1) {
  Bench bench;
  const OccurrenceId ring = bench.part("Ring");
  const OccurrenceId shaft = bench.part("Shaft");
  seat_on(bench, bench.bore(ring, "bore 40", 40.1), bench.outside(shaft, "groove", 40.0), 0,
          {0, 0, 0}, kZ);
  bench.look.seats.radial.back().engaged = wide;
  const auto wall = [&](double z, double out) {
    bench.gap(bench.face(ring, "side", z, out), bench.face(shaft, "wall", z + out * wall_gap, -out),
              wall_gap);
    bench.look.seats.axial.back().axis = {{0, 0, z}, Direction{0, 0, out}};
  };
  wall(0.0, -1.0);
  wall(wide, 1.0);
  return bench;
}

TEST(Joints, AThinRingBetweenTheWallsOfAGrooveGoesWithIt) {
  const Bench bench = ring_in_groove(1.75);
  EXPECT_EQ(joint_between(bench, OccurrenceId(0), OccurrenceId(1)).kind, JointKind::ring);
  EXPECT_TRUE(one_body(bench, OccurrenceId(0), OccurrenceId(1)));
}

TEST(Joints, ABearingBetweenCollarsIsNoRingInAGroove) {
  EXPECT_FALSE(one_body(ring_in_groove(20.0), OccurrenceId(0), OccurrenceId(1)));
}

TEST(Joints, ARingThatIsWantedToRunIsNoneInAGroove) {
  Bench bench = ring_in_groove(1.75);
  bench.want("Ring: bore 40", "Shaft: groove", iso("H8/f7"));
  EXPECT_FALSE(one_body(bench, OccurrenceId(0), OccurrenceId(1)));
}

/// A hub on a cone of a shaft, and a nut on the thread behind it that comes against the hub.
struct OnTaper {
  Bench bench;
  OccurrenceId hub = bench.part("Hub");
  OccurrenceId shaft = bench.part("Shaft");
  OccurrenceId nut = bench.part("Nut");

  OnTaper(double half_angle_deg, double gap, double engaged = 30.0) {
    const double half_angle = radians(half_angle_deg);
    TaperSeat seat;
    seat.hole = bench.cone(hub, "cone", Side::internal, half_angle);
    seat.shaft = bench.cone(shaft, "cone", Side::external, half_angle);
    seat.hole_half_angle = seat.shaft_half_angle = half_angle;
    seat.gap = gap;
    seat.engaged = engaged;
    seat.diameter = 40.0;
    seat.axis = {{0, 0, 0}, kZ};
    bench.look.seats.taper.push_back(seat);
    // The cone grows along z, towards its shoulder: the hub comes to rest that way.
    bench.product(hub).cones.back().axis = {{0, 0, 0}, kZ};
  }
  void screw_on() {
    Thread thread;
    thread.hole = bench.bore(nut, "bore 18", 18.0);
    thread.screw = bench.outside(shaft, "outside 20", 20.0);
    thread.size = "M20";
    thread.axis = {{0, 0, -40}, kZ};
    bench.look.seats.threads.push_back(thread);
    bench.gap(bench.face(nut, "face", -20.0, 1.0), bench.face(hub, "face", -20.0, -1.0), 0.0);
    bench.look.seats.axial.back().axis = {{0, 0, -20}, kZ};
  }
};

TEST(Joints, ASlightTaperThatTouchesHoldsByItself) {
  const OnTaper model(1.5, 0.0);
  const Joint joint = joint_between(model.bench, model.hub, model.shaft);
  EXPECT_EQ(joint.kind, JointKind::taper);
  EXPECT_TRUE(joint.turning && joint.along);
}

TEST(Joints, ASteepTaperThatTouchesMaySlipUnlessANutHoldsIt) {
  OnTaper model(8.0, 0.0);
  EXPECT_EQ(joint_between(model.bench, model.hub, model.shaft).certainty, Certainty::perhaps);
  EXPECT_FALSE(one_body(model.bench, model.hub, model.shaft));
  model.screw_on();
  EXPECT_TRUE(one_body(model.bench, model.hub, model.shaft));
}

TEST(Joints, ATaperThatDoesNotTouchIsNoneEvenUnderANut) {
  OnTaper model(8.0, 0.2);
  model.screw_on();
  EXPECT_FALSE(one_body(model.bench, model.hub, model.shaft));
}

TEST(Joints, TwoChamfersAreNoneEvenUnderANut) {
  OnTaper model(45.0, 0.0, 1.0);
  model.screw_on();
  EXPECT_FALSE(one_body(model.bench, model.hub, model.shaft));
}

}  // namespace spotblue::joints_test
