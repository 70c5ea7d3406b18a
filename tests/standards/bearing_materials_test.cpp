// Source keys as in tests/reference/SOURCES.md; values as printed, in the units printed.
#include "spotblue/standards/bearing_materials.hpp"

#include <gtest/gtest.h>

#include <ostream>
#include <string>

#include "spotblue/standards/materials.hpp"

namespace spotblue::bearing_materials_test {

// Exact by definition: 1 lb = 0.45359237 kg, g = 9.80665 m/s2, 1 in = 25.4 mm, 1 ft = 304.8 mm.
constexpr double kPsi = 0.45359237 * 9.80665 / (25.4 * 25.4);
constexpr double kFtMin = 0.3048 / 60.0;

struct PrintedLimits {
  const char* name;
  double pressure_psi, speed_ft_min, product;  // 0: not printed, or not followed
  const char* source;
};
void PrintTo(const PrintedLimits& row, std::ostream* out) {
  *out << row.name << ", " << row.source;
}

class PrintedBearingLimits : public ::testing::TestWithParam<PrintedLimits> {};

TEST_P(PrintedBearingLimits, AreMet) {
  const PrintedLimits& row = GetParam();
  const BearingMaterial* found = find_bearing_material(row.name);
  ASSERT_NE(found, nullptr);
  const auto check = [](double printed, const std::optional<double>& got, double unit) {
    if (printed > 0.0) {
      EXPECT_NEAR(got.value() / unit, printed, 1e-6 * printed);
    }
  };
  check(row.pressure_psi, found->limits.pressure_mpa, kPsi);
  check(row.speed_ft_min, found->limits.speed_m_s, kFtMin);
  check(row.product, found->limits.pressure_speed_mpa_m_s, kPsi * kFtMin);
}

INSTANTIATE_TEST_SUITE_P(
    Tables, PrintedBearingLimits,
    ::testing::Values(PrintedLimits{"C93200", 3000, 750, 75000, "memory; product MOTT16"},
                      PrintedLimits{"C95400", 4000, 225, 125000, "memory; product MOTT16"},
                      PrintedLimits{"manganese bronze C86300", 8000, 0, 150000,
                                    "memory; product MOTT16"},
                      PrintedLimits{"tin babbitt", 0, 0, 30000, "MOTT16"},
                      PrintedLimits{"nylon", 0, 0, 3000, "MOTT16"},
                      PrintedLimits{"sintered bronze (SAE 841)", 2000, 1200, 0, "memory"}));

struct PrintedMetric {
  const char* name;
  double pressure_mpa, speed_m_s, product_mpa_m_s;  // 0: not printed, or not followed
  double within;                                    // of the print, as a share
  const char* source;
};
void PrintTo(const PrintedMetric& row, std::ostream* out) {
  *out << row.name << ", " << row.source;
}

class PrintedMetricLimits : public ::testing::TestWithParam<PrintedMetric> {};

TEST_P(PrintedMetricLimits, AreMet) {
  const PrintedMetric& row = GetParam();
  const BearingMaterial* found = find_bearing_material(row.name);
  ASSERT_NE(found, nullptr);
  const auto check = [&row](double printed, const std::optional<double>& got) {
    if (printed > 0.0) {
      EXPECT_NEAR(got.value(), printed, row.within * printed);
    }
  };
  check(row.pressure_mpa, found->limits.pressure_mpa);
  check(row.speed_m_s, found->limits.speed_m_s);
  check(row.product_mpa_m_s, found->limits.pressure_speed_mpa_m_s);
}

// MOTT16 prints MPa m/s as 0.035 per 1000 psi ft/min: 0.1 % below the exact 0.035025.
INSTANTIATE_TEST_SUITE_P(Tables, PrintedMetricLimits,
                         ::testing::Values(PrintedMetric{.name = "C93200",
                                                         .pressure_mpa = 0,
                                                         .speed_m_s = 0,
                                                         .product_mpa_m_s = 2.625,
                                                         .within = 1e-3,
                                                         .source = "MOTT16"},
                                           PrintedMetric{.name = "C95400",
                                                         .pressure_mpa = 0,
                                                         .speed_m_s = 0,
                                                         .product_mpa_m_s = 4.375,
                                                         .within = 1e-3,
                                                         .source = "MOTT16"},
                                           PrintedMetric{.name = "manganese bronze C86300",
                                                         .pressure_mpa = 0,
                                                         .speed_m_s = 0,
                                                         .product_mpa_m_s = 5.25,
                                                         .within = 1e-3,
                                                         .source = "MOTT16"},
                                           PrintedMetric{.name = "tin babbitt",
                                                         .pressure_mpa = 5.5,
                                                         .speed_m_s = 0,
                                                         .product_mpa_m_s = 1.05,
                                                         .within = 1e-3,
                                                         .source = "CARVILL, MOTT16"},
                                           PrintedMetric{.name = "nylon 6/6",
                                                         .pressure_mpa = 7,
                                                         .speed_m_s = 2.5,
                                                         .product_mpa_m_s = 0.105,
                                                         .within = 1e-3,
                                                         .source = "CARVILL, MOTT16"},
                                           PrintedMetric{.name = "sintered bronze (SAE 841)",
                                                         .pressure_mpa = 0,
                                                         .speed_m_s = 0,
                                                         .product_mpa_m_s = 0.7,
                                                         .within = 0,
                                                         .source = "CARVILL"},
                                           PrintedMetric{.name = "tin bronze",
                                                         .pressure_mpa = 8,
                                                         .speed_m_s = 3,
                                                         .product_mpa_m_s = 15,
                                                         .within = 0,
                                                         .source = "PU, memory"},
                                           PrintedMetric{.name = "grey iron",
                                                         .pressure_mpa = 4,
                                                         .speed_m_s = 2,
                                                         .product_mpa_m_s = 2,
                                                         .within = 0,
                                                         .source = "PU, memory"},
                                           PrintedMetric{.name = "ductile iron",
                                                         .pressure_mpa = 12,
                                                         .speed_m_s = 5,
                                                         .product_mpa_m_s = 2.5,
                                                         .within = 0,
                                                         .source = "CHENG, memory"},
                                           PrintedMetric{.name = "brass",
                                                         .pressure_mpa = 10,
                                                         .speed_m_s = 1,
                                                         .product_mpa_m_s = 10,
                                                         .within = 0,
                                                         .source = "CHENG, memory"},
                                           PrintedMetric{.name = "acetal",
                                                         .pressure_mpa = 10,
                                                         .speed_m_s = 0,
                                                         .product_mpa_m_s = 0,
                                                         .within = 0,
                                                         .source = "NEALE"}));

TEST(BearingMaterials, GreyIronsPrintedPairsAllKeepItsProduct) {
  // [PU], from memory: 4 MPa at 0.5 m/s, 2 MPa at 1 m/s, 1 MPa at 2 m/s.
  const BearingLimits& iron = find_bearing_material("cast iron")->limits;
  for (const auto& [pressure, speed] : {std::pair{4.0, 0.5}, {2.0, 1.0}, {1.0, 2.0}}) {
    EXPECT_LE(pressure, iron.pressure_mpa.value());
    EXPECT_LE(speed, iron.speed_m_s.value());
    EXPECT_DOUBLE_EQ(pressure * speed, iron.pressure_speed_mpa_m_s.value());
  }
}

TEST(BearingMaterials, SteelIsAJournalAndNoBearing) {
  EXPECT_EQ(find_bearing_material("mild steel"), nullptr);
  EXPECT_TRUE(is_journal_material("mild steel"));
  EXPECT_TRUE(is_journal_material("1045"));
  EXPECT_FALSE(is_journal_material("leaded bronze"));
  EXPECT_FALSE(is_journal_material("aluminium"));
}

TEST(BearingMaterials, TheWeakerOfTwoHasTheLesserOfEachLimit) {
  const BearingLimits pair =
      weaker(find_bearing_material("bronze")->limits, find_bearing_material("grey iron")->limits);
  EXPECT_DOUBLE_EQ(pair.pressure_mpa.value(), 4.0);
  EXPECT_DOUBLE_EQ(pair.pressure_speed_mpa_m_s.value(), 2.0);
  const BearingLimits alone = weaker({}, {1.0, std::nullopt, 3.0});
  EXPECT_DOUBLE_EQ(alone.pressure_mpa.value(), 1.0);
  EXPECT_FALSE(alone.speed_m_s.has_value());
}

TEST(BearingMaterials, EveryRowSaysWhereItIsFromAndKeepsItsRule) {
  for (const BearingMaterial& row : bearing_materials()) {
    EXPECT_FALSE(row.source.empty()) << row.name;
    EXPECT_GT(row.limits.pressure_mpa.value(), 0.0) << row.name;
    EXPECT_LE(row.limits.pressure_speed_mpa_m_s.value(),
              row.limits.pressure_mpa.value() * row.limits.speed_m_s.value_or(1e9))
        << row.name;
    EXPECT_EQ(find_bearing_material(row.name), &row);
  }
}

TEST(ClearanceGuides, GrowFromFineToRough) {
  double least = 0.0;
  for (const ClearanceGuide& guide : clearance_guides()) {
    EXPECT_GE(guide.least, least);
    EXPECT_GT(guide.greatest, guide.least);
    EXPECT_FALSE(guide.source.empty());
    least = guide.least;
  }
}

}  // namespace spotblue::bearing_materials_test
