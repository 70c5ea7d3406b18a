// Source keys as in tests/reference/SOURCES.md.
#include "spotblue/mechanics/thrust_face.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <ostream>

#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"

namespace spotblue::thrust_face_test {

enum class Face { fresh, worn };

// Friction torque = friction x thrust x mean radius.
struct WorkedTorque {
  const char* source;
  Face face;
  double inner_mm, outer_mm, thrust_n, friction, torque_nm, within_nm;
};
void PrintTo(const WorkedTorque& row, std::ostream* out) { *out << row.source; }

class WorkedCollar : public ::testing::TestWithParam<WorkedTorque> {};

TEST_P(WorkedCollar, HasThePrintedTorque) {
  const WorkedTorque& row = GetParam();
  const ThrustRing ring{Diameter(Length::mm(row.inner_mm)), Diameter(Length::mm(row.outer_mm))};
  const Radius radius = row.face == Face::fresh ? mean_radius(ring) : worn_mean_radius(ring);
  EXPECT_NEAR(row.friction * row.thrust_n * radius.in_mm() / 1000.0, row.torque_nm, row.within_nm);
}

// By hand: 0.05 x 20 kN x 2/3 x 75 mm = 50 N m; 0.15 x 120 kN x 2/3 (0.3^3 - 0.15^3)/(0.3^2 -
// 0.15^2) = 18 000 N x 2/3 x 0.35 m = 4200 N m.
INSTANTIATE_TEST_SUITE_P(
    Printed, WorkedCollar,
    ::testing::Values(
        WorkedTorque{.source = "by hand, foot step",
                     .face = Face::fresh,
                     .inner_mm = 0,
                     .outer_mm = 150,
                     .thrust_n = 20000,
                     .friction = 0.05,
                     .torque_nm = 50,
                     .within_nm = 0.05},
        WorkedTorque{.source = "by hand, collars",
                     .face = Face::fresh,
                     .inner_mm = 300,
                     .outer_mm = 600,
                     .thrust_n = 120000,
                     .friction = 0.15,
                     .torque_nm = 4200,
                     .within_nm = 1e-6},
        WorkedTorque{
            .source = "Khurmi, Theory of Machines, ship's thrust shaft, uniform pressure (memory)",
            .face = Face::fresh,
            .inner_mm = 300,
            .outer_mm = 600,
            .thrust_n = 100000,
            .friction = 0.12,
            .torque_nm = 2800,
            .within_nm = 0.5},
        WorkedTorque{.source = "Khurmi, the same, uniform wear (memory)",
                     .face = Face::worn,
                     .inner_mm = 300,
                     .outer_mm = 600,
                     .thrust_n = 100000,
                     .friction = 0.12,
                     .torque_nm = 2700,
                     .within_nm = 0.5}));

// By hand: collars 400 outside on a 250 shaft, 150 kN at 350 kPa: Ro3 - Ri3 = 0.006047 m3, Ro2 -
// Ri2 = 0.024375 m2, six collars.
TEST(ThrustFace, CollarsOfTheHandCalculationAreSix) {
  const ThrustRing ring{Diameter(250_mm), Diameter(400_mm)};
  EXPECT_NEAR(full_area_mm2(ring), std::numbers::pi * 0.024375e6, 1.0);
  EXPECT_EQ(std::ceil(150e3 / (0.35 * full_area_mm2(ring))), 6.0);
  EXPECT_NEAR(mean_radius(ring).in_mm(), 2.0 / 3.0 * 0.006047 / 0.024375 * 1000.0, 0.02);
}

TEST(ThrustFace, MeanRadiusOfANarrowRingIsItsMiddle) {
  const ThrustRing ring{Diameter(99.9_mm), Diameter(100.1_mm)};
  EXPECT_NEAR(mean_radius(ring).in_mm(), 50.0, 1e-4);
  EXPECT_NEAR(worn_mean_radius(ring).in_mm(), 50.0, 1e-12);
}

TEST(ThrustFace, ADiscsMeanRadiusIsTwoThirds) {
  EXPECT_NEAR(mean_radius({Diameter(0_mm), Diameter(90_mm)}).in_mm(), 30.0, 1e-12);
}

// By hand: net area 900 mm2, 450 N: 0.5 MPa; mean radius 2/3 (20^3 - 10^3)/(20^2 - 10^2) = 15.556
// mm, at 60 rpm 2 pi x 0.015556 = 0.09774 m/s; product 0.04887.
TEST(ThrustFace, PressureIsOnTheNetAreaAndSpeedAtTheMeanRadius) {
  const RunningLoad load = thrust_load({Diameter(20_mm), Diameter(40_mm)}, 900.0, 60.0, 450.0);
  EXPECT_NEAR(load.pressure_mpa.value(), 0.5, 1e-12);
  EXPECT_NEAR(load.speed_m_s, 0.09774, 5e-6);
  EXPECT_NEAR(load.pressure_speed_mpa_m_s.value(), 0.04887, 5e-6);
}

TEST(ThrustFace, WithoutThrustOnlyTheSpeedIsKnown) {
  const RunningLoad load =
      thrust_load({Diameter(20_mm), Diameter(40_mm)}, 900.0, 60.0, std::nullopt);
  EXPECT_FALSE(load.pressure_mpa.has_value());
  EXPECT_GT(load.speed_m_s, 0.0);
}

TEST(ThrustFace, LeastBandIsTwoMillimetresOrATwentieth) {
  EXPECT_DOUBLE_EQ(least_band({Diameter(20_mm), Diameter(30_mm)}).in_mm(), 2.0);
  EXPECT_DOUBLE_EQ(least_band({Diameter(80_mm), Diameter(100_mm)}).in_mm(), 5.0);
  EXPECT_DOUBLE_EQ(radial_width({Diameter(20_mm), Diameter(30_mm)}).in_mm(), 5.0);
}

TEST(ThrustFace, MoreAreaThanTheRingHasIsRefused) {
  const Error problem = test::error_of([&] {
    return thrust_load({Diameter(20_mm), Diameter(40_mm)}, 943.0, 60.0, 1.0);
  });
  EXPECT_EQ(problem.place(), "net_area_mm2");
}

TEST(ThrustFace, ARingInsideOutIsRefused) {
  EXPECT_THROW(static_cast<void>(full_area_mm2({Diameter(40_mm), Diameter(20_mm)})), Error);
}

}  // namespace spotblue::thrust_face_test
