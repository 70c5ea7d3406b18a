#include "spotblue/mechanics/sleeve_chain.hpp"

#include <gtest/gtest.h>

#include <cstddef>
#include <random>
#include <vector>

#include "spotblue/base/error.hpp"
#include "spotblue/mechanics/press_fit.hpp"
#include "support/thrown.hpp"

namespace spotblue::sleeve_chain_test {

constexpr unsigned kSeed = 20261125;

Elastic steel() { return {"steel", 205000.0, 0.29, 11.7e-6, 530.0, {}, GivesWay::ductile}; }
Elastic bronze() { return {"bronze", 100000.0, 0.34, 18e-6, 138.0, {}, GivesWay::ductile}; }

std::vector<ChainRing> shaft_bush_hub(double shaft, double bush_bore, double celsius = 20.0) {
  return {{{0.0, shaft, steel()}, celsius},
          {{bush_bore, 44.05, bronze()}, celsius},
          {{44.0, 90.0, steel()}, celsius}};
}

TEST(SleeveChain, AFreeShaftRunsInTheBoreThatPressingLeaves) {
  const ChainState state = sleeve_chain(shaft_bush_hub(29.9, 30.0));
  const ChainState pressed = sleeve_chain(
      std::vector<ChainRing>{{{30.0, 44.05, bronze()}, 20.0}, {{44.0, 90.0, steel()}, 20.0}});
  EXPECT_EQ(state.interfaces.at(0).pressure_mpa, 0.0);
  EXPECT_NEAR(state.interfaces.at(1).pressure_mpa, pressed.interfaces.at(0).pressure_mpa, 1e-9);
  EXPECT_NEAR(state.interfaces.at(0).gap_mm, pressed.rings.at(0).bore_mm - 29.9, 1e-12);
  EXPECT_LT(state.rings.at(1).bore_mm, 30.0);
}

TEST(SleeveChain, ABushThatClosesOnItsShaftIsFoundThoughItsFreeBoreClears) {
  // Free clearance 0.02, close-in by pressing about 0.04.
  const ChainState state = sleeve_chain(shaft_bush_hub(29.98, 30.0));
  EXPECT_LT(state.interfaces.at(0).interference_mm, 0.0);
  EXPECT_GT(state.interfaces.at(0).pressure_mpa, 0.0);
  EXPECT_NEAR(state.rings.at(0).outside_mm, state.rings.at(1).bore_mm, 1e-12);
}

TEST(SleeveChain, PressuresAndGapsExcludeEachOtherInEveryChain) {
  std::mt19937 chance(kSeed);
  const auto between = [&chance](double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(chance);
  };
  for (int i = 0; i < 300; ++i) {
    std::vector<ChainRing> rings;
    double diameter = between(5.0, 20.0);
    for (int ring = 0; ring < 5; ++ring) {
      const double outside = diameter * between(1.1, 1.8);
      const Elastic material = between(0.0, 1.0) < 0.5 ? steel() : bronze();
      rings.push_back({{ring == 0 ? 0.0 : diameter, outside, material}, between(-20.0, 150.0)});
      diameter = outside * (1.0 + between(-0.001, 0.001));
    }
    const ChainState state = sleeve_chain(rings);
    for (std::size_t k = 0; k < state.interfaces.size(); ++k) {
      const InterfaceState& between_rings = state.interfaces[k];
      EXPECT_GE(between_rings.pressure_mpa, -1e-9);
      EXPECT_GE(between_rings.gap_mm, -1e-12);
      EXPECT_EQ(between_rings.pressure_mpa * between_rings.gap_mm, 0.0);
      EXPECT_NEAR(state.rings[k + 1].bore_mm - state.rings[k].outside_mm, between_rings.gap_mm,
                  1e-10);
    }
  }
}

TEST(SleeveChain, EvenWarmingOfOneMaterialOnlyScales) {
  const auto rings = [](double celsius) {
    return std::vector<ChainRing>{{{0.0, 30.01, steel()}, celsius},
                                  {{30.0, 44.05, steel()}, celsius},
                                  {{44.0, 90.0, steel()}, celsius}};
  };
  const ChainState cold = sleeve_chain(rings(20.0));
  const ChainState warm = sleeve_chain(rings(120.0));
  const double grown = 1.0 + 11.7e-6 * 100.0;
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_NEAR(warm.rings[i].outside_mm, grown * cold.rings[i].outside_mm, 1e-9);
  }
  for (std::size_t i = 0; i < 2; ++i) {
    EXPECT_NEAR(warm.interfaces[i].pressure_mpa, cold.interfaces[i].pressure_mpa, 1e-9);
  }
}

// (18 - 11.7)e-6 * 80 K * 44 mm = 0.0222 mm more interference, and the bore falls.
TEST(SleeveChain, ABronzeBushTightensInSteelAsItWarms) {
  const ChainState cold = sleeve_chain(shaft_bush_hub(29.9, 30.0));
  const ChainState warm = sleeve_chain(shaft_bush_hub(29.9, 30.0, 100.0));
  EXPECT_NEAR(warm.interfaces.at(1).interference_mm - cold.interfaces.at(1).interference_mm,
              6.3e-6 * 80.0 * 44.0, 1e-4);
  EXPECT_LT(warm.interfaces.at(0).gap_mm, cold.interfaces.at(0).gap_mm);
}

TEST(SleeveChain, ASolidRingOutsideAnotherIsRefusedByName) {
  std::vector<ChainRing> rings = shaft_bush_hub(29.9, 30.0);
  rings[1].free.inner_mm = 0.0;
  const Error problem = test::error_of([&] { return sleeve_chain(rings); });
  EXPECT_EQ(problem.place(), "rings[1].free.inner_mm");
}

}  // namespace spotblue::sleeve_chain_test
