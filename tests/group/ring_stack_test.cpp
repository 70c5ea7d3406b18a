// How far pressing and warming move a surface of rings one in another, against sums by hand.

#include "group/rings/ring_stack.hpp"

#include <gtest/gtest.h>

#include "spotblue/mechanics/press_fit.hpp"

namespace spotblue::ring_stack_test {

Elastic steel() {
  return {.name = "steel",
          .youngs_modulus_mpa = 2.1e5,
          .poisson_ratio = 0.3,
          .expansion_per_k = 1.2e-5,
          .yield_mpa = 300.0,
          .tensile_mpa = {},
          .gives_way = GivesWay::ductile};
}
Elastic bronze() {
  Elastic one = steel();
  one.youngs_modulus_mpa = 1.1e5;
  one.poisson_ratio = 0.34;
  one.expansion_per_k = 1.8e-5;
  return one;
}

RingWall wall(std::optional<double> joint_inside, std::optional<double> joint_outside,
              Interval begins, Interval ends, const Elastic& material) {
  return {joint_inside, joint_outside, begins, ends, material};
}

// Two rings pressed at 30 with 0.02 to 0.04 mm, the outer one of steel.
RingStack pressed_at_30(double bore, double outside, const Elastic& inner) {
  RingStack stack;
  stack.rings = {wall({}, 30.0, {bore, bore}, {30, 30}, inner),
                 wall(30.0, {}, {30, 30}, {outside, outside}, steel())};
  stack.joints = {{30.0, {0.02, 0.04}, false}};
  stack.running_c = {20.0, 20.0};
  return stack;
}
RingStack bush_in_hub() { return pressed_at_30(20.0, 60.0, bronze()); }
RingStack sleeve_on_shaft() { return pressed_at_30(0.0, 40.0, steel()); }

double close_in(double interference_mm) {
  PressFit fit;
  fit.joint_mm = 30.0;
  fit.interference_mm = interference_mm;
  fit.hub = steel();
  fit.inner = bronze();
  fit.stretches = {{10.0, 60.0, 20.0}};
  return press_fit(fit).bore_close_in_mm;
}

TEST(RingStack, ABushesBoreClosesAsThePressFitSays) {
  const Moved found = moved(bush_in_hub(), 0, RingSurface::bore, 20.0);
  EXPECT_NEAR(found.assembled.low, -close_in(0.04), 2e-5);
  EXPECT_NEAR(found.assembled.high, -close_in(0.02), 2e-5);
}

// By hand (Lame, one material, solid shaft): the sleeve's outside grows by d/D of the interference.
TEST(RingStack, ASleeveGrowsByTheInterferenceTimesTheRatioOfItsDiameters) {
  const Moved found = moved(sleeve_on_shaft(), 1, RingSurface::outside, 40.0);
  EXPECT_NEAR(found.assembled.low, 0.02 * 30 / 40, 2e-5);
  EXPECT_NEAR(found.assembled.high, 0.04 * 30 / 40, 4e-5);
}

TEST(RingStack, WhatIsInPlaceAlreadyMovesNothingMore) {
  RingStack stack = bush_in_hub();
  stack.joints[0].in_place = true;
  const Moved found = moved(stack, 0, RingSurface::bore, 20.0);
  EXPECT_NEAR(found.assembled.low, 0.0, 1e-12);
  EXPECT_NEAR(found.assembled.high, 0.0, 1e-12);
}

TEST(RingStack, ALooseRingMovesNothing) {
  RingStack stack = bush_in_hub();
  stack.joints[0].interference_mm = {-0.05, -0.01};
  const Moved found = moved(stack, 0, RingSurface::bore, 20.0);
  EXPECT_NEAR(found.assembled.low, 0.0, 1e-12);
  EXPECT_NEAR(found.assembled.high, 0.0, 1e-12);
}

TEST(RingStack, AGroovedBushLiesBetweenThePlainRingAndTheRingUnderTheGroove) {
  RingStack stack = bush_in_hub();
  const Moved plain = moved(stack, 0, RingSurface::bore, 20.0);
  stack.rings[0].begins = {20, 26};
  const Moved grooved = moved(stack, 0, RingSurface::bore, 20.0);
  EXPECT_NEAR(grooved.assembled.high, plain.assembled.high, 1e-12);
  EXPECT_LT(grooved.assembled.low, plain.assembled.low);
  stack.rings[0].begins = {26, 26};
  const Moved thin = moved(stack, 0, RingSurface::bore, 20.0);
  EXPECT_NEAR(grooved.assembled.low, thin.assembled.low, 1e-12);
}

TEST(RingStack, AHubWithAKeywayIsNoStifferThanPlainAndNoWeakerThanTheRingOutsideIt) {
  RingStack stack = bush_in_hub();
  const Moved plain = moved(stack, 0, RingSurface::bore, 20.0);
  stack.rings[1].begins = {30, 38};
  const Moved slotted = moved(stack, 0, RingSurface::bore, 20.0);
  EXPECT_NEAR(slotted.assembled.low, plain.assembled.low, 1e-12);
  EXPECT_GT(slotted.assembled.high, plain.assembled.high);
}

TEST(RingStack, AHubCutThroughMayPressOnNothing) {
  RingStack stack = bush_in_hub();
  stack.rings[1].begins = {30, 60};
  const Moved found = moved(stack, 0, RingSurface::bore, 20.0);
  EXPECT_EQ(found.assembled.high, 0.0);
  EXPECT_NEAR(found.assembled.low, -close_in(0.04), 2e-5);
}

// A bronze bush outgrows its steel hub: warm its bore is tighter than its own growth makes it.
TEST(RingStack, AWarmBushGrowsByLessThanAFreeOne) {
  RingStack stack = bush_in_hub();
  stack.running_c = {80.0, 80.0};
  const Moved found = moved(stack, 0, RingSurface::bore, 20.0);
  const double free_growth = 20.0 * 1.8e-5 * 60.0;
  EXPECT_LT(found.running.high - found.assembled.high, free_growth);
}

TEST(RingStack, ARingAloneGrowsWithItsOwnHeat) {
  RingStack stack;
  stack.rings = {wall({}, {}, {10, 10}, {20, 20}, steel())};
  stack.running_c = {70.0};
  const Moved found = moved(stack, 0, RingSurface::outside, 20.0);
  EXPECT_EQ(found.assembled.low, 0.0);
  EXPECT_NEAR(found.running.low, 20.0 * 1.2e-5 * 50.0, 1e-9);
}

// Three rings: what the outer one presses on the middle reaches the bore of the inner one.
TEST(RingStack, AThirdRingClosesTheFirstOnesBoreFurther) {
  RingStack stack = bush_in_hub();
  stack.joints[0].interference_mm = {0.04, 0.04};
  const Moved two = moved(stack, 0, RingSurface::bore, 20.0);
  stack.rings[1].joint_outside = 60.0;
  stack.rings.push_back(wall(60.0, {}, {60, 60}, {90, 90}, steel()));
  stack.joints.push_back({60.0, {0.05, 0.05}, false});
  stack.running_c.push_back(20.0);
  EXPECT_LT(moved(stack, 0, RingSurface::bore, 20.0).assembled.low, two.assembled.low - 1e-3);
}

// A stranger's case: the press of what is in place was counted again for the third part. Ring and
// hub of one steel that sit in each other are as one ring to what is pressed into them.
TEST(RingStack, WhatIsInPlaceIsAsOnePieceToAThirdRing) {
  RingStack three = bush_in_hub();
  three.rings[1] = wall(30.0, 45.0, {30, 30}, {45, 45}, steel());
  three.rings.push_back(wall(45.0, {}, {45, 45}, {60, 60}, steel()));
  three.joints.push_back({45.0, {0.05, 0.05}, true});
  three.running_c.push_back(20.0);
  const Moved in_two = moved(three, 0, RingSurface::bore, 20.0);
  const Moved in_one = moved(bush_in_hub(), 0, RingSurface::bore, 20.0);
  EXPECT_NEAR(in_two.assembled.low, in_one.assembled.low, 5e-5);
  EXPECT_NEAR(in_two.assembled.high, in_one.assembled.high, 5e-5);
}

}  // namespace spotblue::ring_stack_test
