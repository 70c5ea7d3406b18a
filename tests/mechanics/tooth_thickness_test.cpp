#include "spotblue/mechanics/tooth_thickness.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <ostream>

#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"

namespace spotblue::tooth_thickness_test {

// Thickness of a tooth with profile shift x.
double thickness_of_shift(const ToothForm& form, double shift) {
  return form.module_mm *
         (0.5 * std::numbers::pi +
          2.0 * shift * std::tan(form.pressure_angle_deg * std::numbers::pi / 180));
}

struct SpanPrint {
  ToothForm form;
  int teeth, spanned;
  double shift;
  double over_mm;
  double within;
  const char* source;
};

void PrintTo(const SpanPrint& row, std::ostream* out) {
  *out << "m " << row.form.module_mm << " z " << row.teeth << " k " << row.spanned;
}

class SpanTable : public testing::TestWithParam<SpanPrint> {};

TEST_P(SpanTable, SpanAgreesWithThePrint) {
  const SpanPrint& row = GetParam();
  EXPECT_NEAR(span_mm(row.form, row.teeth, row.spanned, thickness_of_shift(row.form, row.shift)),
              row.over_mm, row.within)
      << row.source;
}

TEST_P(SpanTable, ThicknessComesBackFromTheSpan) {
  const SpanPrint& row = GetParam();
  // W moves by cos(alpha) for each unit of thickness.
  EXPECT_NEAR(thickness_from_span_mm(row.form, row.teeth, row.spanned, row.over_mm),
              thickness_of_shift(row.form, row.shift), 1.1 * row.within);
}

const ToothForm kModule1{1.0, 20.0, 0.0};
INSTANTIATE_TEST_SUITE_P(
    Print, SpanTable,
    testing::Values(
        // Base tangent lengths of module 1, 20 degrees, as gear makers print them; from memory.
        SpanPrint{.form = kModule1,
                  .teeth = 9,
                  .spanned = 2,
                  .shift = 0.0,
                  .over_mm = 4.5542,
                  .within = 5.1e-5,
                  .source = "tables, from memory"},
        SpanPrint{.form = kModule1,
                  .teeth = 17,
                  .spanned = 2,
                  .shift = 0.0,
                  .over_mm = 4.6663,
                  .within = 5.1e-5,
                  .source = "tables, from memory"},
        SpanPrint{.form = kModule1,
                  .teeth = 18,
                  .spanned = 3,
                  .shift = 0.0,
                  .over_mm = 7.6324,
                  .within = 5.1e-5,
                  .source = "tables, from memory"},
        SpanPrint{.form = kModule1,
                  .teeth = 26,
                  .spanned = 3,
                  .shift = 0.0,
                  .over_mm = 7.7445,
                  .within = 5.1e-5,
                  .source = "tables, from memory"},
        SpanPrint{.form = kModule1,
                  .teeth = 27,
                  .spanned = 4,
                  .shift = 0.0,
                  .over_mm = 10.7106,
                  .within = 5.1e-5,
                  .source = "tables, from memory"},
        SpanPrint{.form = kModule1,
                  .teeth = 36,
                  .spanned = 5,
                  .shift = 0.0,
                  .over_mm = 13.7888,
                  .within = 5.1e-5,
                  .source = "tables, from memory"},
        SpanPrint{.form = kModule1,
                  .teeth = 45,
                  .spanned = 6,
                  .shift = 0.0,
                  .over_mm = 16.8670,
                  .within = 5.1e-5,
                  .source = "tables, from memory"},
        // Worked examples of a gear maker's technical reference, spur and helical; from memory.
        SpanPrint{.form = {3.0, 20.0, 0.0},
                  .teeth = 24,
                  .spanned = 4,
                  .shift = 0.4,
                  .over_mm = 32.8266,
                  .within = 5.1e-5,
                  .source = "KHKREF, from memory"},
        SpanPrint{.form = {3.0, 20.0, 25.0},
                  .teeth = 24,
                  .spanned = 5,
                  .shift = 0.4,
                  .over_mm = 42.0085,
                  .within = 5.1e-5,
                  .source = "KHKREF, from memory"}));

TEST(ToothThickness, OfShiftedTeethAgreesWithThePrint) {
  // Source: [SDP81] tables 10-1 and 10-3, seen: m 10, x 0.3: s 17.8918; m_n 5, x 0.2: s 8.5819.
  EXPECT_NEAR(shift_of_thickness({10.0, 20.0, 0.0}, 17.8918), 0.3, 1e-5);
  EXPECT_NEAR(shift_of_thickness({5.0, 20.0, 25.0}, 8.5819), 0.2, 1.5e-5);
}

TEST(ToothThickness, OfARackIsHalfThePitch) {
  // Source: [SDP81] table 10-2, seen: m 3: 4.7124.
  EXPECT_NEAR(standard_thickness_mm({3.0, 20.0, 0.0}), 4.7124, 5e-5);
}

TEST(ToothThickness, OverPinsAgreesWithThePrint) {
  // Source: [KHKREF], from memory: m 1, z 20, pin 1.7: 22.2941; helical m_n 1, z 20, 15 degrees,
  // x 0.4, pin 2: 24.5696.
  EXPECT_NEAR(over_pins_mm(kModule1, 20, 1.7, thickness_of_shift(kModule1, 0.0), Pins::two),
              22.2941, 5.1e-5);
  const ToothForm helical{1.0, 20.0, 15.0};
  EXPECT_NEAR(over_pins_mm(helical, 20, 2.0, thickness_of_shift(helical, 0.4), Pins::two), 24.5696,
              5.1e-5);
}

TEST(ToothThickness, ComesBackFromTwoAndFromThreePins) {
  for (const ToothForm& form : {kModule1, ToothForm{2.5, 20.0, 0.0}, ToothForm{2.0, 14.5, 18.0}}) {
    for (const int teeth : {17, 18, 36, 101}) {
      for (const Pins pins : {Pins::two, Pins::three}) {
        SCOPED_TRACE(teeth);
        const double thickness = 0.97 * standard_thickness_mm(form);
        const double pin = 1.75 * form.module_mm;
        const double over = over_pins_mm(form, teeth, pin, thickness, pins);
        EXPECT_NEAR(thickness_from_pins_mm(form, teeth, pin, over, pins), thickness, 1e-10);
      }
    }
  }
}

TEST(ToothThickness, ThreePinsOnAnOddGearMeasureLessThanTwo) {
  // Two pins stand cos(90 deg/z) of the centres' circle apart; the anvil across two of three lies
  // lower still. Hand: z 5, circle 2 r: r (1 + cos 36 deg) = 1.809 r against 2 r cos 18 deg =
  // 1.902 r.
  const double thickness = standard_thickness_mm(kModule1);
  const double two = over_pins_mm(kModule1, 5, 1.9, thickness, Pins::two) - 1.9;
  const double three = over_pins_mm(kModule1, 5, 1.9, thickness, Pins::three) - 1.9;
  EXPECT_NEAR(three / two, 1.8090169944 / 1.9021130326, 1e-9);
}

TEST(ToothThickness, TeethToSpanAreThoseOfTheTables) {
  // Source: the tables change from k to k + 1 at 9, 18, 27 teeth for 20 degrees; from memory.
  EXPECT_EQ(teeth_to_span(kModule1, 13), 2);
  EXPECT_EQ(teeth_to_span(kModule1, 20), 3);
  EXPECT_EQ(teeth_to_span(kModule1, 36), 5);
  // [KHKREF], from memory: helical 25 degrees, z 24, x 0.4: 4.63, taken as 5.
  EXPECT_NEAR(teeth_to_span({3.0, 20.0, 25.0}, 24), 4.5, 0.6);
}

TEST(ToothThickness, MeasurementsOfAnotherGearAreRefused) {
  EXPECT_THROW((void)thickness_from_span_mm(kModule1, 36, 5, 16.8670), Error);
  EXPECT_THROW((void)thickness_from_span_mm(kModule1, 36, 1, 1.5), Error);
  EXPECT_THROW((void)thickness_from_pins_mm(kModule1, 36, 1.7, 20.0, Pins::two), Error);
}

TEST(ToothThickness, APinThatTouchesNoFlankIsRefusedByName) {
  // Ten teeth of module 1: half a module drops to the roots, eight ride on the tips.
  const double thickness = standard_thickness_mm(kModule1);
  for (const double pin : {0.5, 1.0, 8.0, 50.0}) {
    const Error problem =
        test::error_of([&] { return over_pins_mm(kModule1, 10, pin, thickness, Pins::two); });
    EXPECT_EQ(problem.place(), "pin_mm") << pin;
  }
}

TEST(ToothThickness, AToothThatFillsItsPitchIsRefusedByName) {
  const Error problem = test::error_of([&] { return span_mm(kModule1, 36, 5, std::numbers::pi); });
  EXPECT_EQ(problem.place(), "thickness_mm");
}

}  // namespace spotblue::tooth_thickness_test
