#include "spotblue/mechanics/shaft_section.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "spotblue/base/error.hpp"

namespace spotblue::shaft_section_test {

constexpr double kMpaPerPsi = 0.00689475729;
constexpr double kNmPerPoundInch = 0.112984829;

TEST(ShaftSection, HollowShaftsAreThoseOfTheHandCalculation) {
  // pi/32 (114^4 - 102^4) = 0.09817477 x 60,652,800 = 5,954,575 mm4; 5e6 x 57/5,954,575 = 47.86
  // MPa. pi/32 (40^4 - 30^4) = 171,805.85 mm4; 50 x 171,805.85/20 = 429,514.6 N mm.
  const RoundSection tube{114.0, 102.0};
  EXPECT_NEAR(polar_moment_mm4(tube), 5954575.0, 0.5);
  EXPECT_NEAR(nominal_stress(tube, 5000.0, 0.0).torsion_mpa, 47.86, 5e-3);
  const RoundSection small{40.0, 30.0};
  EXPECT_NEAR(polar_moment_mm4(small), 171805.85, 5e-3);
  EXPECT_NEAR(50.0 * polar_modulus_mm3(small), 429514.53, 0.2);
}

TEST(ShaftSection, NominalTorsionAgreesWithTheWorkedSteps) {
  // Source: [GERE] problem 3.11-3, seen: 500 lb-in; greatest stress over K: 8900/1.20 at 0.7 in,
  // 6400/1.29 at 0.8, 4900/1.41 at 0.9 psi, all to two digits.
  const double torque = 500.0 * kNmPerPoundInch;
  EXPECT_NEAR(1.20 * nominal_stress({0.7 * 25.4}, torque, 0).torsion_mpa / kMpaPerPsi, 8900, 50);
  EXPECT_NEAR(1.29 * nominal_stress({0.8 * 25.4}, torque, 0).torsion_mpa / kMpaPerPsi, 6400, 50);
  EXPECT_NEAR(1.41 * nominal_stress({0.9 * 25.4}, torque, 0).torsion_mpa / kMpaPerPsi, 4900, 50);
}

TEST(ShaftSection, BendingIsTwiceTheShearOfTheSameMoment) {
  const NominalStress stress = nominal_stress({20.0}, 100.0, -100.0);
  EXPECT_DOUBLE_EQ(stress.bending_mpa, 2.0 * stress.torsion_mpa);
  // 32 x 100,000 / (pi x 8000) = 127.324 MPa.
  EXPECT_NEAR(stress.bending_mpa, 127.324, 5e-4);
}

TEST(ShaftSection, EquivalentStressIsByDistortionEnergy) {
  EXPECT_NEAR(equivalent_mpa({100.0, 0.0}), 173.205, 1e-3);
  EXPECT_NEAR(equivalent_mpa({40.0, 30.0}), std::sqrt(900.0 + 4800.0), 1e-9);
}

TEST(ShaftSection, StrengthLeftOfTheDemoStudIsThatOfTheHandCalculation) {
  // Source: tests/reference/hand-checks.md, "Shaft after a cut".
  EXPECT_NEAR(strength_left({29.62}, {28.97}), 0.93560, 1e-5);
  EXPECT_NEAR(strength_left({29.62}, {24.042}), 0.53476, 1e-5);
}

TEST(ShaftSection, AHoleThroughTheShaftCostsMoreOnceItIsTurnedDown) {
  EXPECT_LT(strength_left({30.0, 15.0}, {28.0, 15.0}), strength_left({30.0}, {28.0}));
}

TEST(ShaftSection, ACornerSmallerThanTheFilletFouls) {
  EXPECT_NEAR(corner_over_fillet_mm(0.5, 0.8), -0.3, 1e-12);
  EXPECT_NEAR(corner_over_fillet_mm(1.0, 0.8), 0.2, 1e-12);
}

TEST(ShaftSection, ABoreWiderThanTheShaftIsRefused) {
  EXPECT_THROW((void)polar_moment_mm4({20.0, 20.0}), Error);
  EXPECT_THROW((void)corner_over_fillet_mm(-1.0, 0.0), Error);
}

}  // namespace spotblue::shaft_section_test
