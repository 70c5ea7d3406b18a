// Source keys as in tests/reference/SOURCES.md; worked in the units of the print.
#include "spotblue/mechanics/plain_bearing.hpp"

#include <gtest/gtest.h>

#include <array>
#include <ostream>

#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

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
  const RunningLoad load = bearing_load(Length::inch(row.diameter_in), Length::inch(row.length_in),
                                        row.rpm, row.load_lb * kPound);
  EXPECT_NEAR(load.pressure_mpa.value() / kPsi, row.pressure_psi, row.pressure_within);
  EXPECT_NEAR(load.speed_m_s / kFtMin, row.speed_ft_min, row.speed_within);
  if (row.product > 0.0) {
    EXPECT_NEAR(load.pressure_speed_mpa_m_s.value() / kPsi / kFtMin, row.product,
                row.product_within);
  }
}

// DMR rounds the area to 0.562 in2 and takes 0.262 for pi/12: 151.2 and 39.3 for 151.11 and 39.27.
INSTANTIATE_TEST_SUITE_P(
    Printed, WorkedBearing,
    ::testing::Values(
        Worked{"MOTT16 example 16-1", 150, 1.5, 1.5, 500, 66.7, 196, 13100, 0.05, 0.5, 50},
        Worked{"BNB load ratings", 35, 0.625, 1.03125, 120, 54.3, 19.635, 1066.2, 0.05, 5e-4, 0.2},
        Worked{"DMR design principles", 85, 0.75, 0.75, 200, 151.2, 39.3, 0, 0.15, 0.05, 0},
        Worked{"SHIGSM12 problem 12-23, trial 1", 200, 1, 1, 400, 200, 104.7, 0, 0.5, 0.05, 0}));

struct ChartRow {
  double rpm;
  std::array<double, 10> speed_ft_min;
};
void PrintTo(const ChartRow& row, std::ostream* out) { *out << row.rpm << " rpm"; }

class SpeedChart : public ::testing::TestWithParam<ChartRow> {};

// EDT rounds 0.262 x rpm x diameter up, in places by one more: within 2 ft/min.
TEST_P(SpeedChart, IsMet) {
  constexpr std::array<double, 10> diameters_in{0.5, 0.75, 1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0};
  for (std::size_t i = 0; i < diameters_in.size(); ++i) {
    EXPECT_NEAR(surface_speed_m_s(Length::inch(diameters_in[i]), GetParam().rpm) / kFtMin,
                GetParam().speed_ft_min[i], 2.0)
        << diameters_in[i];
  }
}

INSTANTIATE_TEST_SUITE_P(
    Printed, SpeedChart,
    ::testing::Values(ChartRow{1500, {197, 294, 393, 492, 590, 786, 983, 1179, 1376, 1572}},
                      ChartRow{600, {79, 118, 158, 197, 236, 316, 393, 472, 551, 629}},
                      ChartRow{100, {14, 20, 27, 33, 40, 53, 66, 80, 92, 105}}));

TEST(PlainBearing, RatiosArePerUnitOfTheShaft) {
  BearingSizes sizes;
  sizes.diameter = 29_mm;
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
  const RunningLoad load = bearing_load(25_mm, 25_mm, 60.0, std::nullopt);
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
  try {
    const double pressure = projected_pressure_mpa(-1.0, 25_mm, 25_mm);
    FAIL() << "was accepted: " << pressure;
  } catch (const Error& problem) {
    EXPECT_EQ(problem.place(), "load_n");
  }
}

}  // namespace
}  // namespace spotblue
