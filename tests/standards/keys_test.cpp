#include "spotblue/standards/keys.hpp"

#include <gtest/gtest.h>

#include <limits>
#include <ostream>
#include <string>

#include "spotblue/base/error.hpp"
#include "support/csv.hpp"
#include "support/thrown.hpp"

namespace spotblue::keys_test {

using test::CsvRow;
using test::number;
using test::read_reference;

constexpr double kExact_mm = 1e-9;

// Source: keys_din6885_parallel.csv [DIN6885-C, DIN6885-P]; widths N9, P9, JS9 printed there in um.
void check_metric(const CsvRow& row, Length shaft) {
  const ParallelKey key = parallel_key(Diameter(shaft));
  EXPECT_NEAR(key.width.in_mm(), number(row, "key_b_mm"), kExact_mm);
  EXPECT_NEAR(key.height.in_mm(), number(row, "key_h_mm"), kExact_mm);
  EXPECT_NEAR(key.shaft_depth.in_mm(), number(row, "shaft_depth_t1_mm"), kExact_mm);
  EXPECT_NEAR(key.hub_depth.in_mm(), number(row, "hub_depth_t2_mm"), kExact_mm);
  EXPECT_NEAR(key.depth_tolerance.in_mm(), number(row, "depth_tol_plus_mm"), kExact_mm);
  const auto um = [&key](Length limit) { return (limit - key.width).in_um(); };
  const KeyWidths normal = key_widths(key, KeyFit::normal);
  EXPECT_NEAR(um(normal.shaft_keyseat.upper), number(row, "shaft_keyway_N9_um_upper"), 1e-6);
  EXPECT_NEAR(um(normal.shaft_keyseat.lower), number(row, "N9_lower"), 1e-6);
  EXPECT_NEAR(um(normal.hub_keyseat.upper), number(row, "hub_JS9_pm_um"), 1e-6);
  EXPECT_NEAR(um(normal.hub_keyseat.lower), -number(row, "hub_JS9_pm_um"), 1e-6);
  const KeyWidths tight = key_widths(key, KeyFit::tight);
  EXPECT_NEAR(um(tight.shaft_keyseat.upper), number(row, "P9_upper"), 1e-6);
  EXPECT_NEAR(um(tight.hub_keyseat.lower), number(row, "P9_lower"), 1e-6);
}

TEST(ParallelKey, EveryPrintedRowIsMet) {
  const auto rows = read_reference("keys_din6885_parallel.csv");
  for (const CsvRow& row : rows) {
    SCOPED_TRACE(row.at("shaft_over_mm"));
    check_metric(row, Length::mm(number(row, "shaft_upto_mm")));
    check_metric(row, Length::mm(number(row, "shaft_over_mm") + 0.5));
  }
  EXPECT_EQ(rows.size(), parallel_keys().size());
}

// Source: ISO 773, free fit H9 and D10; values of ISO 286 for a width of 8 mm: H9 0/+36, D10
// +40/+98, h9 0/-36 um.
TEST(ParallelKey, FreeFitTakesH9AndD10) {
  const ParallelKey key = parallel_key(Diameter(25_mm));
  const KeyWidths free = key_widths(key, KeyFit::free);
  EXPECT_NEAR(free.key.lower.in_mm(), 7.964, kExact_mm);
  EXPECT_NEAR(free.shaft_keyseat.upper.in_mm(), 8.036, kExact_mm);
  EXPECT_NEAR(free.hub_keyseat.lower.in_mm(), 8.040, kExact_mm);
  EXPECT_NEAR(free.hub_keyseat.upper.in_mm(), 8.098, kExact_mm);
}

TEST(ParallelKey, RowsJoinAndDepthsLeaveRoomAboveTheKey) {
  Length last = 6_mm;
  for (const ParallelKey& key : parallel_keys()) {
    EXPECT_EQ(key.shaft_over, last);
    EXPECT_GT(key.shaft_depth + key.hub_depth, key.height);
    EXPECT_LT(key.shaft_depth + key.hub_depth, key.height + 0.8_mm);
    last = key.shaft_up_to;
  }
}

// Source: keys_ansi_b17_1.csv [SHOPREF].
void check_inch(const CsvRow& row, Length shaft) {
  const InchKey key = inch_key(Diameter(shaft));
  EXPECT_NEAR(key.width.in_inch(), number(row, "key_width_in"), kExact_mm);
  EXPECT_NEAR(key.square_height.in_inch(), number(row, "square_h_in"), kExact_mm);
  EXPECT_NEAR(inch_keyseat_depth(key.square_height).in_inch(),
              number(row, "square_keyseat_depth_in"), kExact_mm);
  ASSERT_EQ(key.rectangular_height.has_value(), !row.at("rect_h_in").empty());
  if (key.rectangular_height) {
    EXPECT_NEAR(key.rectangular_height->in_inch(), number(row, "rect_h_in"), kExact_mm);
    EXPECT_NEAR(inch_keyseat_depth(*key.rectangular_height).in_inch(),
                number(row, "rect_keyseat_depth_in"), kExact_mm);
  }
}

TEST(InchKey, EveryPrintedRowIsMet) {
  const auto rows = read_reference("keys_ansi_b17_1.csv");
  for (const CsvRow& row : rows) {
    SCOPED_TRACE(row.at("shaft_upto_in"));
    check_inch(row, Length::inch(number(row, "shaft_upto_in")));
    check_inch(row, Length::inch(number(row, "shaft_over_in") + 0.01));
  }
  EXPECT_EQ(rows.size(), inch_keys().size());
}

// Pinned to memory of ASME B17.1 table 4, not seen: proves no more than that the table is read
// right.
TEST(InchKey, PinnedClass1IsFreeAndClass2IsClose) {
  const KeyWidths free = inch_key_widths(0.25_inch, InchKeyFit::class_1);
  EXPECT_NEAR(free.key.lower.in_inch(), 0.248, kExact_mm);
  EXPECT_NEAR(free.key.upper.in_inch(), 0.250, kExact_mm);
  EXPECT_NEAR(free.hub_keyseat.upper.in_inch(), 0.252, kExact_mm);
  const KeyWidths close = inch_key_widths(0.25_inch, InchKeyFit::class_2);
  EXPECT_NEAR(close.key.upper.in_inch(), 0.251, kExact_mm);
  EXPECT_NEAR(close.shaft_keyseat.lower.in_inch(), 0.250, kExact_mm);
}

struct BadShaft {
  const char* name;
  double mm;
  ErrorCode code;
};
void PrintTo(const BadShaft& row, std::ostream* out) { *out << row.mm << " mm"; }

class NoKey : public testing::TestWithParam<BadShaft> {};

TEST_P(NoKey, IsSaidByBothStandards) {
  const Length shaft = Length::mm(GetParam().mm);
  EXPECT_EQ(test::error_of([&] { return parallel_key(Diameter(shaft)); }).code(), GetParam().code);
  EXPECT_EQ(test::error_of([&] { return inch_key(Diameter(shaft)); }).code(), GetParam().code);
}

INSTANTIATE_TEST_SUITE_P(Shafts, NoKey,
                         testing::Values(BadShaft{"TooThin", 5.9, ErrorCode::not_in_standard},
                                         BadShaft{"TooThick", 501.0, ErrorCode::not_in_standard},
                                         BadShaft{"Zero", 0.0, ErrorCode::bad_input},
                                         BadShaft{"Negative", -20.0, ErrorCode::bad_input},
                                         BadShaft{"NaN", std::numeric_limits<double>::quiet_NaN(),
                                                  ErrorCode::bad_input}),
                         [](const auto& row) { return row.param.name; });

TEST(InchKey, WidthBeyondTheTableIsRefused) {
  EXPECT_THROW((void)inch_key_widths(3.0_inch, InchKeyFit::class_1), Error);
  EXPECT_THROW((void)inch_key_widths(0.0_inch, InchKeyFit::class_2), Error);
}

}  // namespace spotblue::keys_test
