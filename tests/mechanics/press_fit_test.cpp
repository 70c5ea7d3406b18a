#include "spotblue/mechanics/press_fit.hpp"

#include <gtest/gtest.h>

#include <random>
#include <vector>

#include "spotblue/base/error.hpp"
#include "spotblue/mechanics/sleeve_chain.hpp"
#include "support/thrown.hpp"

namespace spotblue::press_fit_test {

constexpr unsigned kSeed = 20261125;

PressFit bush_in_boss(double interference = 0.05) {
  PressFit fit;
  fit.joint_mm = 44.0;
  fit.interference_mm = interference;
  fit.hub = {"grey iron", 100000.0, 0.26, 10.8e-6, {}, 207.0, GivesWay::brittle};
  fit.inner = {"bronze", 100000.0, 0.34, 18e-6, 138.0, {}, GivesWay::ductile};
  fit.stretches = {{20.0, 80.0, 30.0}};
  return fit;
}

// A fit of random sizes and materials that the functions accept.
PressFit random_fit(std::mt19937& chance) {
  const auto between = [&chance](double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(chance);
  };
  PressFit fit;
  fit.joint_mm = between(5.0, 300.0);
  fit.interference_mm = fit.joint_mm * between(0.0001, 0.002);
  fit.hub = {"hub", between(7e4, 2.1e5), between(0.2, 0.35), 12e-6, 300.0, {}, GivesWay::ductile};
  fit.inner = {"in", between(7e4, 2.1e5), between(0.2, 0.35), 18e-6, 140.0, {}, GivesWay::ductile};
  fit.stretches = {
      {between(1.0, 100.0), fit.joint_mm * between(1.1, 4.0), fit.joint_mm * between(0.0, 0.9)}};
  return fit;
}

TEST(PressFit, RoughnessIsTakenOffByItsShareAndNeverBelowNothing) {
  // 0.8 * (6.3 + 6.3) um = 10.08 um, 0.4 of the same 5.04 um.
  EXPECT_NEAR(effective_interference_mm(0.05, 6.3, 6.3, kGreatRoughnessLoss), 0.03992, 1e-12);
  EXPECT_NEAR(effective_interference_mm(0.05, 6.3, 6.3, kSmallRoughnessLoss), 0.04496, 1e-12);
  EXPECT_DOUBLE_EQ(effective_interference_mm(0.004, 6.3, 6.3, kGreatRoughnessLoss), 0.0);
  EXPECT_DOUBLE_EQ(effective_interference_mm(-0.02, 6.3, 6.3, kGreatRoughnessLoss), 0.0);
}

TEST(PressFit, NoInterferenceNoPressure) {
  const PressState state = press_fit(bush_in_boss(0.0));
  EXPECT_EQ(state.greatest_pressure_mpa, 0.0);
  EXPECT_EQ(state.force_to_press_n, 0.0);
  EXPECT_EQ(state.bore_close_in_mm, 0.0);
  EXPECT_EQ(state.hub.utilisation.value(), 0.0);
}

// By hand: pressure * pi * 44 * 20 * friction; torque on a 22 mm arm.
TEST(PressFit, ForceAndHoldFollowFromPressureAreaAndFriction) {
  const PressState state = press_fit(bush_in_boss());
  const double pressed = state.least_pressure_mpa * 3.14159265358979 * 44.0 * 20.0;
  EXPECT_NEAR(state.force_to_press_n, 0.2 * pressed, 1e-6);
  EXPECT_NEAR(state.axial_hold_n, 0.08 * pressed, 1e-6);
  EXPECT_NEAR(state.holding_torque_nm, 0.08 * pressed * 0.022, 1e-9);
}

TEST(PressFit, TheBushGivesWayAtItsBoreAndTheIronAtItsOwn) {
  const PressState state = press_fit(bush_in_boss());
  EXPECT_EQ(state.inner.surface, PressSurface::inner_bore);
  EXPECT_EQ(state.hub.surface, PressSurface::hub_bore);
  EXPECT_NEAR(state.hub.utilisation.value(), state.hub.stress.hoop_mpa / 207.0, 1e-12);
  EXPECT_NEAR(state.inner.utilisation.value(), -state.inner.stress.hoop_mpa / 138.0, 1e-12);
}

TEST(PressFit, AJointOfTwoWallsSumsForcesAndTakesTheWorstStress) {
  PressFit thick = bush_in_boss();
  PressFit thin = bush_in_boss();
  thin.stretches = {{10.0, 54.0, 30.0}};
  PressFit both = bush_in_boss();
  both.stretches.push_back(thin.stretches.front());
  const PressState state = press_fit(both);
  EXPECT_NEAR(state.axial_hold_n, press_fit(thick).axial_hold_n + press_fit(thin).axial_hold_n,
              1e-6);
  EXPECT_EQ(state.hub.utilisation, press_fit(thin).hub.utilisation);
  EXPECT_EQ(state.inner.utilisation, press_fit(thick).inner.utilisation);
  EXPECT_LT(state.least_pressure_mpa, state.greatest_pressure_mpa);
}

TEST(PressFit, CloseInGrowsWithInterference) {
  std::mt19937 chance(kSeed);
  for (int i = 0; i < 200; ++i) {
    PressFit fit = random_fit(chance);
    const PressState loose = press_fit(fit);
    fit.interference_mm *= 1.5;
    const PressState tight = press_fit(fit);
    EXPECT_NEAR(tight.bore_close_in_mm, 1.5 * loose.bore_close_in_mm, 1e-9);
    EXPECT_GT(tight.bore_close_in_mm, loose.bore_close_in_mm);
    EXPECT_GT(tight.hub_growth_mm, loose.hub_growth_mm);
  }
}

// Both parts meet at one size: hub bore and inner outside move towards each other by exactly the
// interference.
TEST(PressFit, TheTwoPartsShareTheInterference) {
  std::mt19937 chance(kSeed);
  for (int i = 0; i < 200; ++i) {
    const PressFit fit = random_fit(chance);
    const StretchState state = press_fit(fit).stretches.at(0);
    EXPECT_NEAR(state.hub.bore_change_mm - state.inner.outside_change_mm, fit.interference_mm,
                1e-12);
  }
}

TEST(PressFit, IsAChainOfTwoRings) {
  std::mt19937 chance(kSeed);
  for (int i = 0; i < 200; ++i) {
    const PressFit fit = random_fit(chance);
    const PressStretch& wall = fit.stretches.front();
    const double half = 0.5 * fit.interference_mm;
    const ChainState chain = sleeve_chain(
        std::vector<ChainRing>{{{wall.inner_bore_mm, fit.joint_mm + half, fit.inner}, 20.0},
                               {{fit.joint_mm - half, wall.hub_outside_mm, fit.hub}, 20.0}});
    const double pressure = press_fit(fit).least_pressure_mpa;
    // The chain keeps each ring's own size where the fit has one nominal: 0.2 % of the diameter,
    // ten times that where the wall is a tenth of it.
    EXPECT_NEAR(chain.interfaces.at(0).pressure_mpa, pressure, 0.02 * pressure);
  }
}

TEST(PressFit, AHubNoLargerThanTheJointIsRefusedByName) {
  PressFit fit = bush_in_boss();
  fit.stretches.front().hub_outside_mm = 44.0;
  const Error problem = test::error_of([&] { return press_fit(fit); });
  EXPECT_EQ(problem.code(), ErrorCode::bad_input);
  EXPECT_EQ(problem.place(), "fit.stretches[0].hub_outside_mm");
}

TEST(PressFit, AnInterferenceBeyondAnyMetalIsRefusedByName) {
  PressFit fit = bush_in_boss();
  fit.interference_mm = 0.51 * fit.joint_mm;
  EXPECT_EQ(test::error_of([&] { return press_fit(fit); }).place(), "fit.interference_mm");
}

TEST(PressFit, ReversedFrictionIsRefused) {
  PressFit fit = bush_in_boss();
  fit.friction_least = 0.3;
  EXPECT_THROW(static_cast<void>(press_fit(fit)), Error);
}

}  // namespace spotblue::press_fit_test
