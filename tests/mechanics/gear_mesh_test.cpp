#include "spotblue/mechanics/gear_mesh.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <ostream>

#include "spotblue/base/error.hpp"
#include "spotblue/mechanics/tooth_thickness.hpp"
#include "support/csv.hpp"
#include "support/thrown.hpp"

namespace spotblue::gear_mesh_test {

constexpr double kDegrees = 180.0 / std::numbers::pi;

GearMesh standard_mesh(const ToothForm& form, int teeth_a, int teeth_b, double centre_mm) {
  const double thickness = standard_thickness_mm(form);
  return gear_mesh(form, standard_gear(form, teeth_a, thickness),
                   standard_gear(form, teeth_b, thickness), centre_mm, 0.0);
}

double shifted(const ToothForm& form, double x) {
  return standard_thickness_mm(form) +
         2.0 * x * form.module_mm * std::tan(form.pressure_angle_deg / kDegrees);
}

TEST(GearMesh, PathOfContactIsThatOfTheHandCalculation) {
  // 20 degrees, 20 and 60 teeth, module 8, addendum 1 module: radii 80 and 240, tips 88 and 248,
  // base circles 75.1754 and 225.5262: 45.7456 + 103.1597 - 320 x 0.3420201 = 39.4588.
  const GearMesh mesh = standard_mesh({8.0, 20.0, 0.0}, 20, 60, 320.0);
  EXPECT_NEAR(mesh.path_mm, 39.4588, 1e-4);
}

TEST(GearMesh, PathOfContactOfShortTeethAgreesWithTheTextbook) {
  // Source: a textbook of theory of machines, from memory: 30 and 80 teeth, module 12, addendum
  // 10 mm: path 52.3 mm, contact ratio 1.5 (to that many digits).
  const ToothForm form{12.0, 20.0, 0.0};
  MeshedGear a = standard_gear(form, 30, standard_thickness_mm(form));
  MeshedGear b = standard_gear(form, 80, standard_thickness_mm(form));
  a.tip_mm = 360.0 + 20.0;
  b.tip_mm = 960.0 + 20.0;
  const GearMesh mesh = gear_mesh(form, a, b, 660.0, 0.0);
  EXPECT_NEAR(mesh.path_mm, 52.3, 0.05);
  EXPECT_NEAR(mesh.contact_ratio, 1.5, 0.05);
}

TEST(GearMesh, ShiftedSpurPairMeshesTightAtThePrintedCentre) {
  // Source: [KHKREF], from memory: m 3, z 12 and 24, x 0.6 and 0.36: a 56.4999, 26.0886 degrees,
  // working circles 37.667 and 75.333, contact ratio 1.2025 (tips 44.840 and 79.400).
  const ToothForm form{3.0, 20.0, 0.0};
  const MeshedGear a{12, shifted(form, 0.6), 44.840, 32.1};
  const MeshedGear b{24, shifted(form, 0.36), 79.400, 66.66};
  const GearMesh mesh = gear_mesh(form, a, b, 56.4999, 0.0);
  EXPECT_NEAR(mesh.tight_centre_mm.value(), 56.4999, 5e-5);
  EXPECT_NEAR(mesh.working_angle_rad * kDegrees, 26.0886, 1e-4);
  EXPECT_NEAR(mesh.working_a_mm, 37.667, 6e-4);
  EXPECT_NEAR(mesh.working_b_mm, 75.333, 6e-4);
  EXPECT_NEAR(mesh.contact_ratio, 1.2025, 5e-4);
  EXPECT_NEAR(mesh.backlash_mm, 0.0, 5e-5);
}

TEST(GearMesh, ShiftedHelicalPairMeshesTightAtThePrintedCentre) {
  // Source: [KHKREF], from memory: m_n 3, 30 degrees, z 12 and 60, x 0.09809 and 0: a 125.000,
  // 23.1126 degrees transverse, working circles 41.667 and 208.333.
  const ToothForm form{3.0, 20.0, 30.0};
  const MeshedGear a{12, shifted(form, 0.09809), 48.153, 34.657};
  const MeshedGear b{60, shifted(form, 0.0), 213.842, 200.346};
  const GearMesh mesh = gear_mesh(form, a, b, 125.0, 0.0);
  EXPECT_NEAR(mesh.tight_centre_mm.value(), 125.0, 5e-4);
  EXPECT_NEAR(mesh.working_angle_rad * kDegrees, 23.1126, 1e-4);
  EXPECT_NEAR(mesh.working_a_mm, 41.667, 5e-4);
  EXPECT_NEAR(mesh.working_b_mm, 208.333, 5e-4);
}

TEST(GearMesh, ADiametralPitchPairAgreesWithTheTextbook) {
  // Source: Shigley's Mechanical Engineering Design, example 13-1, from memory: 16 and 40 teeth of
  // pitch 2: centre 14.00 in; at 14.25 in the pitch diameters are 8.143 and 20.357 in; base radii
  // 3.76 and 9.40 in.
  const ToothForm form = form_of_diametral_pitch(2.0);
  const GearMesh mesh = standard_mesh(form, 16, 40, 14.25 * 25.4);
  EXPECT_NEAR(mesh.reference_centre_mm / 25.4, 14.0, 1e-12);
  EXPECT_NEAR(mesh.working_a_mm / 25.4, 8.143, 5e-4);
  EXPECT_NEAR(mesh.working_b_mm / 25.4, 20.357, 5e-4);
  EXPECT_NEAR(0.5 * gear_circles(form, 16).base_mm / 25.4, 3.76, 5e-3);
  EXPECT_NEAR(0.5 * gear_circles(form, 40).base_mm / 25.4, 9.40, 5e-3);
}

TEST(GearMesh, BacklashForEachUnitOfCentreAgreesWithThePrint) {
  // Source: [QTC], seen: the centre opens 1.933 (14.5 degrees) or 1.374 (20 degrees) of the
  // backlash, to first order at the reference centre.
  EXPECT_NEAR(1.0 / standard_mesh({2.0, 14.5, 0.0}, 20, 40, 60.0).backlash_per_centre, 1.933, 6e-4);
  EXPECT_NEAR(1.0 / standard_mesh({2.0, 20.0, 0.0}, 20, 40, 60.0).backlash_per_centre, 1.374, 6e-4);
}

struct Opened {
  double by_mm, circumferential_mm, normal_mm;
};

void PrintTo(const Opened& row, std::ostream* out) { *out << "opened " << row.by_mm; }

class OpenedCentre : public testing::TestWithParam<Opened> {};

TEST_P(OpenedCentre, BacklashAgreesWithTheSumOfTheWorkingThicknesses) {
  // Worked apart from this code by pw - s1w - s2w (ISO 21771): m 2, z 20 and
  // 40, centre 60 mm.
  const GearMesh mesh = standard_mesh({2.0, 20.0, 0.0}, 20, 40, 60.0 + GetParam().by_mm);
  EXPECT_NEAR(mesh.backlash_mm, GetParam().circumferential_mm, 5.1e-6);
  EXPECT_NEAR(mesh.normal_backlash_mm, GetParam().normal_mm, 5.1e-6);
}

INSTANTIATE_TEST_SUITE_P(Computed, OpenedCentre,
                         testing::Values(Opened{0.01, 0.00729, 0.00684},
                                         Opened{0.05, 0.03654, 0.03431},
                                         Opened{0.10, 0.07337, 0.06883},
                                         Opened{0.20, 0.14789, 0.13851},
                                         Opened{0.50, 0.37822, 0.35248}));

TEST(GearMesh, HandCalculationOfTheDemoPair) {
  // Source: tests/reference/hand-checks.md, "Gear mesh".
  const ToothForm form{2.5, 20.0, 0.0};
  const double thin = standard_thickness_mm(form) - 0.05;
  const GearMesh mesh =
      gear_mesh(form, standard_gear(form, 18, thin), standard_gear(form, 36, thin), 67.6, 20.0);
  EXPECT_NEAR(mesh.working_angle_rad * kDegrees, 20.23158, 1e-5);
  EXPECT_NEAR(mesh.backlash_mm, 0.173456, 1e-6);
  EXPECT_NEAR(mesh.normal_backlash_mm, 0.162754, 1e-6);
  EXPECT_NEAR(mesh.backlash_per_centre, 0.739675, 1e-6);
  EXPECT_NEAR(mesh.contact_ratio, 1.57171, 1e-5);
  EXPECT_NEAR(mesh.tip_clearance_a_mm, 0.725, 1e-9);
  EXPECT_NEAR(mesh.tip_clearance_b_mm, 0.725, 1e-9);
}

TEST(GearMesh, ExactBacklashTendsToTheFirstOrderRule) {
  // 2 da tan(alpha) on the circle, 2 da sin(alpha) square to the flanks ([QTC] 14-2 and 14-3a).
  const double by = 1e-4;
  const GearMesh mesh = standard_mesh({2.0, 20.0, 0.0}, 20, 40, 60.0 + by);
  EXPECT_NEAR(mesh.backlash_mm / (2.0 * by * std::tan(20.0 / kDegrees)), 1.0, 1e-4);
  EXPECT_NEAR(mesh.normal_backlash_mm / (2.0 * by * std::sin(20.0 / kDegrees)), 1.0, 1e-4);
}

TEST(GearMesh, DerivativeIsThatOfTheBacklash) {
  const ToothForm form{2.5, 20.0, 15.0};
  const double thickness = standard_thickness_mm(form) - 0.03;
  const MeshedGear a = standard_gear(form, 18, thickness);
  const MeshedGear b = standard_gear(form, 36, thickness);
  const double step = 1e-4;
  const double slope = (gear_mesh(form, a, b, 70.3 + step, 0.0).backlash_mm -
                        gear_mesh(form, a, b, 70.3 - step, 0.0).backlash_mm) /
                       (2.0 * step);
  EXPECT_NEAR(gear_mesh(form, a, b, 70.3, 0.0).backlash_per_centre, slope, 1e-8);
}

TEST(GearMesh, IsTheSameWhicheverGearComesFirst) {
  const ToothForm form{2.0, 20.0, 10.0};
  const MeshedGear a = standard_gear(form, 15, 3.0);
  const MeshedGear b = standard_gear(form, 44, 3.1);
  const GearMesh one = gear_mesh(form, a, b, 60.2, 12.0);
  const GearMesh other = gear_mesh(form, b, a, 60.2, 12.0);
  EXPECT_DOUBLE_EQ(one.backlash_mm, other.backlash_mm);
  EXPECT_DOUBLE_EQ(one.contact_ratio, other.contact_ratio);
  EXPECT_DOUBLE_EQ(one.tip_clearance_a_mm, other.tip_clearance_b_mm);
  EXPECT_DOUBLE_EQ(one.past_base_of_a_mm, other.past_base_of_b_mm);
}

TEST(GearMesh, InchesAndMillimetresGiveTheSame) {
  const GearMesh inch = standard_mesh(form_of_diametral_pitch(10.0), 20, 40, 3.005 * 25.4);
  const GearMesh metric = standard_mesh({2.54, 20.0, 0.0}, 20, 40, 76.327);
  EXPECT_NEAR(inch.backlash_mm, metric.backlash_mm, 1e-12);
  EXPECT_NEAR(inch.contact_ratio, metric.contact_ratio, 1e-12);
}

TEST(GearMesh, AHelixTendingToNothingIsASpurGear) {
  const GearMesh spur = standard_mesh({2.0, 20.0, 0.0}, 20, 40, 60.1);
  const GearMesh helical = standard_mesh({2.0, 20.0, 1e-5}, 20, 40, 60.1);
  EXPECT_NEAR(spur.backlash_mm, helical.backlash_mm, 1e-9);
  EXPECT_NEAR(spur.contact_ratio, helical.contact_ratio, 1e-9);
}

TEST(GearMesh, OverlapRatioIsTheFaceOverTheAxialPitch) {
  const ToothForm form{3.0, 20.0, 30.0};
  const double axial_pitch = std::numbers::pi * 3.0 / std::sin(30.0 / kDegrees);
  const double thickness = standard_thickness_mm(form);
  const GearMesh mesh = gear_mesh(form, standard_gear(form, 20, thickness),
                                  standard_gear(form, 30, thickness), 86.7, 2.0 * axial_pitch);
  EXPECT_NEAR(mesh.overlap_ratio, 2.0, 1e-12);
}

TEST(GearMesh, ALongTipOnASmallPinionReachesPastItsBaseCircle) {
  // Full-depth 20 degree teeth: 12 with 24 interfere, 18 with 36 do not (textbooks give 13 to 16
  // as the fewest for such ratios).
  EXPECT_GT(standard_mesh({3.0, 20.0, 0.0}, 12, 24, 54.0).past_base_of_a_mm, 0.0);
  EXPECT_LT(standard_mesh({2.5, 20.0, 0.0}, 18, 36, 67.5).past_base_of_a_mm, 0.0);
}

TEST(GearMesh, FewestTeethWithoutUndercutAgreeWithThePrint) {
  // Source: textbooks, from memory: 17.097 for 20 degrees, 31.9 for 14.5, 11.2 for 25.
  EXPECT_NEAR(undercut_below_teeth({1.0, 20.0, 0.0}), 17.097, 5e-4);
  EXPECT_NEAR(undercut_below_teeth({1.0, 14.5, 0.0}), 31.9, 0.05);
  EXPECT_NEAR(undercut_below_teeth({1.0, 25.0, 0.0}), 11.2, 0.05);
}

TEST(GearMesh, TeethThatFillTheirPitchAreRefusedByName) {
  const ToothForm form{2.0, 20.0, 0.0};
  MeshedGear full = standard_gear(form, 20, 3.0);
  full.thickness_mm = 2.0 * std::numbers::pi;
  const Error problem = test::error_of(
      [&] { return gear_mesh(form, standard_gear(form, 40, 3.0), full, 60.0, 10.0); });
  EXPECT_EQ(problem.place(), "b.thickness_mm");
}

TEST(GearMesh, ACentreInsideTheBaseCirclesIsRefused) {
  EXPECT_THROW((void)standard_mesh({2.0, 20.0, 0.0}, 20, 40, 56.0), Error);
}

TEST(LeastBacklash, AgreesWithEveryRowOfTheTable) {
  for (const auto& row : test::read_reference("gear_min_backlash_computed.csv")) {
    const double module = test::number(row, "normal_module_mm");
    const double centre = test::number(row, "centre_distance_mm");
    SCOPED_TRACE(row.at("normal_module_mm") + " at " + row.at("centre_distance_mm"));
    const LeastBacklash least = least_backlash(module, centre);
    EXPECT_NEAR(least.iso_mm, test::number(row, "jbn_min_formula_mm"), 5.1e-5);
    EXPECT_NEAR(least.agma_mm, test::number(row, "agma2002_formula_mm"), 1e-9);
    // The table is the formula rounded up to 0.01.
    EXPECT_NEAR(std::ceil(least.iso_mm * 100.0 - 1e-9) / 100.0,
                test::number(row, "jbn_min_table_mm"), 1e-9);
  }
}

}  // namespace spotblue::gear_mesh_test
