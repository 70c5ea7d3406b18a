// Temperatures named for slipping in keep both parts below their yield.
#include "spotblue/mechanics/shrink_in.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>

#include "support/chance.hpp"

namespace spotblue::shrink_in_test {

using test::Chance;

Elastic drawn_material(Chance& chance) {
  return {"drawn",
          chance.between(60000.0, 210000.0),
          chance.between(0.22, 0.38),
          chance.between(9e-6, 25e-6),
          chance.between(100.0, 600.0),
          {},
          GivesWay::ductile};
}

PressFit drawn_fit(Chance& chance) {
  PressFit fit;
  fit.joint_mm = chance.between(20.0, 80.0);
  fit.interference_mm = fit.joint_mm * chance.between(0.0, 0.001);
  fit.hub = drawn_material(chance);
  fit.inner = drawn_material(chance);
  const double bore = chance.in(0.3) ? 0.0 : fit.joint_mm * chance.between(0.3, 0.85);
  fit.stretches = {{20.0, fit.joint_mm * chance.between(1.2, 3.0), bore}};
  return fit;
}

// What both parts at one temperature use of their strength.
double used_at(PressFit fit, double temperature_c, double bench_c) {
  const double apart = fit.inner.expansion_per_k - fit.hub.expansion_per_k;
  fit.interference_mm += apart * fit.joint_mm * (temperature_c - bench_c);
  if (fit.interference_mm <= 0.0) {
    return 0.0;
  }
  const PressState state = press_fit(fit);
  return std::max(*state.hub.utilisation, *state.inner.utilisation);
}

TEST(ShrinkIn, NamesNoTemperatureAtWhichEitherPartYields) {
  Chance chance(20261204);
  int heated = 0;
  int kept_cool = 0;
  for (int round = 0; round < 2000; ++round) {
    SCOPED_TRACE(round);
    const PressFit fit = drawn_fit(chance);
    if (used_at(fit, 20.0, 20.0) > 1.0) {
      continue;
    }
    const SlipBounds bounds = slip_bounds(fit, 20.0);
    const SlipIn slip = slip_in(fit.hub, fit.inner, fit.joint_mm, fit.interference_mm,
                                0.001 * fit.joint_mm, 20.0, bounds);
    for (const auto& named : {slip.heat_hub_to_c, slip.chill_inner_to_c}) {
      if (named) {
        EXPECT_LE(used_at(fit, *named, 20.0), 1.0 + 1e-9);
      }
    }
    if (slip.dry_ice_will_do) {
      EXPECT_LE(used_at(fit, kDryIce_c, 20.0), 1.0 + 1e-9);
    }
    if (slip.liquid_nitrogen_will_do) {
      EXPECT_LE(used_at(fit, kLiquidNitrogen_c, 20.0), 1.0 + 1e-9);
    }
    heated += slip.heat_hub_to_c ? 1 : 0;
    kept_cool += slip.heat_hub_to_c ? 0 : 1;
  }
  EXPECT_GT(heated, 300);
  EXPECT_GT(kept_cool, 50);
}

TEST(ShrinkIn, ABushInAStifferHubIsBoundedWhereItsBoreBeginsToYield) {
  // The bush of tests/reference/hand-checks.md, "A bush warmed until it comes back loose": 43.3 C.
  const Elastic bronze{"leaded bronze", 100000.0, 0.34, 18e-6, 138.0, {}, GivesWay::ductile};
  const Elastic steel{"steel", 205000.0, 0.29, 11.7e-6, 530.0, {}, GivesWay::ductile};
  PressFit fit;
  fit.joint_mm = 44.0;
  fit.interference_mm = 0.044;
  fit.hub = steel;
  fit.inner = bronze;
  fit.stretches = {{20.0, 160.0, 30.0}};
  const SlipBounds bounds = slip_bounds(fit, 20.0);
  EXPECT_NEAR(bounds.hottest_c.value(), 43.3, 0.05);
  EXPECT_FALSE(bounds.coldest_c.has_value());
  EXPECT_FALSE(slip_in(steel, bronze, 44.0, 0.044, 0.044, 20.0, bounds).heat_hub_to_c.has_value());
}

TEST(ShrinkIn, PartsThatExpandAlikeHaveNoBounds) {
  const Elastic steel{"steel", 205000.0, 0.29, 11.7e-6, 530.0, {}, GivesWay::ductile};
  PressFit fit;
  fit.joint_mm = 44.0;
  fit.interference_mm = 0.044;
  fit.hub = steel;
  fit.inner = steel;
  fit.stretches = {{20.0, 160.0, 30.0}};
  const SlipBounds bounds = slip_bounds(fit, 20.0);
  EXPECT_FALSE(bounds.hottest_c || bounds.coldest_c);
}

}  // namespace spotblue::shrink_in_test
