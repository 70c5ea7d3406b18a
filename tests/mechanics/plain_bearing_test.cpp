// Source keys as in tests/reference/SOURCES.md; worked in the units of the print.
#include "spotblue/mechanics/plain_bearing.hpp"

#include <gtest/gtest.h>

#include <array>
#include <ostream>

#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"

namespace spotblue::plain_bearing_test {

// Exact by definition: 1 lb = 0.45359237 kg, g = 9.80665 m/s2, 1 in = 25.4 mm, 1 ft = 304.8 mm.
constexpr double kPound = 0.45359237 * 9.80665;
constexpr double kPsi = kPound / (25.4 * 25.4);
constexpr double kFtMin = 0.3048 / 60.0;

struct Worked {
  const char* source;
  double load_lb, diameter_in, length_in, rpm;
  double pressure_psi, speed_ft_min, product;  // 0: not printed
  double pressure_within, speed_within, product_within;
};
void PrintTo(const Worked& row, std::ostream* out) { *out << row.source; }

class WorkedBearing : public ::testing::TestWithParam<Worked> {};

TEST_P(WorkedBearing, IsWithinTheRoundingOfItsPrint) {
  const Worked& row = GetParam();
  const RunningLoad load =
      bearing_load(Diameter(Length::inch(row.diameter_in)), Length::inch(row.length_in), row.rpm,
                   row.load_lb * kPound, 360.0);
  EXPECT_NEAR(load.pressure_mpa.value() / kPsi, row.pressure_psi, row.pressure_within);
  EXPECT_NEAR(load.speed_m_s / kFtMin, row.speed_ft_min, row.speed_within);
  if (row.product > 0.0) {
    EXPECT_NEAR(load.pressure_speed_mpa_m_s.value() / kPsi / kFtMin, row.product,
                row.product_within);
  }
}

// By hand: 35/(0.625 x 1.03125) = 54.30; pi/12 x 0.625 x 120 = 19.635; 85/0.75^2 = 151.11; pi/12 x
// 0.75 x 200 = 39.270.
INSTANTIATE_TEST_SUITE_P(Printed, WorkedBearing,
                         ::testing::Values(Worked{.source = "MOTT16 example 16-1",
                                                  .load_lb = 150,
                                                  .diameter_in = 1.5,
                                                  .length_in = 1.5,
                                                  .rpm = 500,
                                                  .pressure_psi = 66.7,
                                                  .speed_ft_min = 196,
                                                  .product = 13100,
                                                  .pressure_within = 0.05,
                                                  .speed_within = 0.5,
                                                  .product_within = 50},
                                           Worked{.source = "by hand, short bush",
                                                  .load_lb = 35,
                                                  .diameter_in = 0.625,
                                                  .length_in = 1.03125,
                                                  .rpm = 120,
                                                  .pressure_psi = 54.30,
                                                  .speed_ft_min = 19.635,
                                                  .product = 1066.2,
                                                  .pressure_within = 0.005,
                                                  .speed_within = 5e-4,
                                                  .product_within = 0.2},
                                           Worked{.source = "by hand, square bush",
                                                  .load_lb = 85,
                                                  .diameter_in = 0.75,
                                                  .length_in = 0.75,
                                                  .rpm = 200,
                                                  .pressure_psi = 151.11,
                                                  .speed_ft_min = 39.270,
                                                  .product = 0,
                                                  .pressure_within = 0.005,
                                                  .speed_within = 5e-4,
                                                  .product_within = 0},
                                           Worked{.source = "SHIGSM problem 12-23, trial 1",
                                                  .load_lb = 200,
                                                  .diameter_in = 1,
                                                  .length_in = 1,
                                                  .rpm = 400,
                                                  .pressure_psi = 200,
                                                  .speed_ft_min = 104.7,
                                                  .product = 0,
                                                  .pressure_within = 0.5,
                                                  .speed_within = 0.05,
                                                  .product_within = 0}));

TEST(PlainBearing, RatiosArePerUnitOfTheShaft) {
  BearingSizes sizes;
  sizes.diameter = Diameter(29_mm);
  sizes.length = 43.5_mm;
  sizes.clearance = {0.029_mm, 0.058_mm};
  sizes.wall = 4.5_mm;
  const BearingRatios ratios = bearing_ratios(sizes);
  EXPECT_DOUBLE_EQ(ratios.clearance_least, 0.001);
  EXPECT_DOUBLE_EQ(ratios.clearance_greatest, 0.002);
  EXPECT_DOUBLE_EQ(ratios.length, 1.5);
  EXPECT_DOUBLE_EQ(ratios.wall.value(), 4.5 / 29.0);
}

TEST(PlainBearing, WithoutALoadOnlyTheSpeedIsKnown) {
  const RunningLoad load = bearing_load(Diameter(25_mm), 25_mm, 60.0, std::nullopt, 360.0);
  EXPECT_GT(load.speed_m_s, 0.0);
  EXPECT_FALSE(load.pressure_mpa.has_value());
  EXPECT_FALSE(load.pressure_speed_mpa_m_s.has_value());
}

TEST(PlainBearing, SlowWithoutLoadOnlySpeedCounts) {
  const LimitShares shares =
      limit_shares({1.0, 30.0, 30.0}, {10.0, 2.0, 1.0}, RunningDuty::no_load_slow);
  EXPECT_FALSE(shares.pressure.has_value());
  EXPECT_DOUBLE_EQ(shares.speed.value(), 0.5);
  EXPECT_FALSE(shares.pressure_speed.has_value());
}

TEST(PlainBearing, IntermittentWorkIsAllowedAShareOfTheTime) {
  const LimitShares shares =
      limit_shares({1.0, 5.0, 5.0}, {10.0, 2.0, 2.0}, RunningDuty::intermittent);
  EXPECT_DOUBLE_EQ(shares.pressure_speed.value(), 2.5);
  EXPECT_DOUBLE_EQ(shares.running_time.value(), 0.4);
}

TEST(PlainBearing, ContinuousWorkIsHeldToEveryLimitAllTheTime) {
  const LimitShares shares =
      limit_shares({1.0, 5.0, 5.0}, {10.0, 2.0, 2.0}, RunningDuty::continuous);
  EXPECT_DOUBLE_EQ(shares.pressure.value(), 0.5);
  EXPECT_DOUBLE_EQ(shares.pressure_speed.value(), 2.5);
  EXPECT_FALSE(shares.running_time.has_value());
}

TEST(PlainBearing, ALimitThatIsNotKnownGivesNoShare) {
  const LimitShares shares =
      limit_shares({1.0, 5.0, 5.0}, {10.0, std::nullopt, std::nullopt}, RunningDuty::continuous);
  EXPECT_TRUE(shares.pressure.has_value());
  EXPECT_FALSE(shares.speed.has_value());
  EXPECT_FALSE(shares.pressure_speed.has_value());
}

TEST(PlainBearing, ANegativeLoadIsRefusedByName) {
  const Error problem =
      test::error_of([&] { return projected_pressure_mpa(-1.0, Diameter(25_mm), 25_mm); });
  EXPECT_EQ(problem.place(), "load_n");
}

// By hand: sin 60 = 0.8660254; from half the way round on the whole diameter bears.
TEST(ProjectedWidth, IsTheChordOfWhatIsCovered) {
  EXPECT_NEAR(projected_width(Diameter(40_mm), 120.0).in_mm(), 34.641016, 1e-6);
  EXPECT_EQ(projected_width(Diameter(40_mm), 180.0), 40_mm);
  EXPECT_EQ(projected_width(Diameter(40_mm), 360.0), 40_mm);
}

TEST(ProjectedWidth, RefusesMoreThanAllRoundByItsName) {
  EXPECT_EQ(test::error_of([] { return projected_width(Diameter(40_mm), 361.0); }).place(),
            "covered_deg");
}

// 866.0254 N on 34.641016 x 25 is 1 MPa.
TEST(BearingLoad, OfAPartialBearingPressesOnItsChord) {
  const RunningLoad load = bearing_load(Diameter(40_mm), 25_mm, 60.0, 866.0254, 120.0);
  EXPECT_NEAR(load.pressure_mpa.value(), 1.0, 1e-6);
}

// By hand: 500 + 6 x 15,000/20 = 5000. At a sixth of the length off, one end is pressed twice as
// hard and the other not at all: 600 x 5 = 3000 N mm on 30.
TEST(EdgeLoad, IsThatOfTheHarderEnd) {
  EXPECT_NEAR(edge_load_n(500.0, 15.0, 20_mm), 5000.0, 1e-9);
  EXPECT_NEAR(edge_load_n(500.0, -15.0, 20_mm), 5000.0, 1e-9);
  EXPECT_NEAR(edge_load_n(600.0, 3.0, 30_mm), 1200.0, 1e-9);
  EXPECT_EQ(edge_load_n(500.0, 0.0, 20_mm), 500.0);
}

}  // namespace spotblue::plain_bearing_test
