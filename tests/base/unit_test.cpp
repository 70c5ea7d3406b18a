#include "spotblue/base/unit.hpp"

#include <gtest/gtest.h>

#include <ostream>

#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"

namespace spotblue::unit_test {

struct LengthText {
  const char* name;
  const char* text;
  LengthUnit unit;
  double mm;
};
void PrintTo(const LengthText& row, std::ostream* out) { *out << row.text; }

class ParseLength : public testing::TestWithParam<LengthText> {};

TEST_P(ParseLength, ReadsWhatPeopleWrite) {
  EXPECT_DOUBLE_EQ(parse_length(GetParam().text, GetParam().unit).in_mm(), GetParam().mm);
}

INSTANTIATE_TEST_SUITE_P(Written, ParseLength,
                         testing::Values(LengthText{"Decimal", "33.34", LengthUnit::mm, 33.34},
                                         LengthText{"Fraction", "5/16", LengthUnit::inch, 7.9375},
                                         LengthText{"Mixed", "1 5/16", LengthUnit::inch, 33.3375},
                                         LengthText{"Dashed", "1-5/16", LengthUnit::inch, 33.3375},
                                         LengthText{"OwnUnit", " 12 mm ", LengthUnit::inch, 12.0},
                                         LengthText{"InchMark", "3/4\"", LengthUnit::mm, 19.05},
                                         LengthText{"Negative", "-2.5", LengthUnit::mm, -2.5},
                                         LengthText{"NegativeMixed", "-1 1/2 in", LengthUnit::mm,
                                                    -38.1}),
                         [](const auto& row) { return row.param.name; });

class ParseLengthRefuses : public testing::TestWithParam<const char*> {};

TEST_P(ParseLengthRefuses, WhatIsNoLength) {
  EXPECT_THROW((void)parse_length(GetParam(), LengthUnit::mm), Error);
}

INSTANTIATE_TEST_SUITE_P(Nonsense, ParseLengthRefuses,
                         testing::Values("", "mm", "1/0", "1 2", "--3", "nan", "inf", "1 -1/2",
                                         "12 furlongs", "1e999", "1e308/0.01", "1e308 in",
                                         "1e308 1e308/0.01"));

TEST(ParseLength, ADecimalCommaIsAskedBackWithTheCure) {
  for (const char* const text : {"25,4", "1,250 mm", "0,001 in"}) {
    const Error error = test::error_of([&] { return parse_length(text, LengthUnit::mm); });
    EXPECT_NE(error.cure().find("decimals with a point"), std::string::npos) << text;
  }
}

TEST(FormatLength, NeverWritesMinusZero) {
  EXPECT_EQ(format_length(Length::um(-0.1), LengthUnit::mm, 3), "0.000");
}

TEST(FormatSize, DropsDecimalsThatSayNothing) {
  EXPECT_EQ(format_size(Length::mm(44.0), LengthUnit::mm), "44");
  EXPECT_EQ(format_size(Length::mm(6.6), LengthUnit::mm), "6.6");
  EXPECT_EQ(format_size(Length::mm(25.4), LengthUnit::inch), "1");
}

}  // namespace spotblue::unit_test
