#include "spotblue/standards/b4_1.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>
#include <ostream>
#include <string>
#include <vector>

#include "spotblue/base/error.hpp"
#include "support/csv.hpp"
#include "support/thrown.hpp"

namespace spotblue::b4_1_test {

using test::CsvRow;
using test::distinct;
using test::number;
using test::read_reference;

constexpr double kRounding_thou = 1e-9;  // tables have two decimals at most

double thou(Length length) { return length.in_inch() * 1000.0; }

class PublishedB4_1 : public testing::TestWithParam<std::string> {};

// Source: tests/reference/ansi_b41_fits.csv, whose last column names the handbook page or "memory".
void check_row(const CsvRow& row, Length nominal) {
  const Fit got = b4_1_fit(nominal, row.at("class"));
  EXPECT_NEAR(thou(got.hole.lower - nominal), number(row, "hole_lower_thou"), kRounding_thou);
  EXPECT_NEAR(thou(got.hole.upper - nominal), number(row, "hole_upper_thou"), kRounding_thou);
  EXPECT_NEAR(thou(got.shaft.lower - nominal), number(row, "shaft_lower_thou"), kRounding_thou);
  EXPECT_NEAR(thou(got.shaft.upper - nominal), number(row, "shaft_upper_thou"), kRounding_thou);
  // Interference is printed without its sign, and least interference is greatest clearance.
  const bool interference = row.at("fit_meaning") == "interference";
  const double least = interference ? -number(row, "fit_max_thou") : number(row, "fit_min_thou");
  const double greatest = interference ? -number(row, "fit_min_thou") : number(row, "fit_max_thou");
  EXPECT_NEAR(thou(got.least_clearance), least, kRounding_thou);
  EXPECT_NEAR(thou(got.greatest_clearance), greatest, kRounding_thou);
  EXPECT_EQ(fit_kind_name(got.kind), row.at("kind"));
}

TEST_P(PublishedB4_1, EveryRowOfTheClassIsMet) {
  int checked = 0;
  for (const CsvRow& row : read_reference("ansi_b41_fits.csv")) {
    if (row.at("class") != GetParam()) {
      continue;
    }
    const double over = number(row, "over_in");
    const double up_to = number(row, "upto_in");
    SCOPED_TRACE(row.at("over_in") + " to " + row.at("upto_in") + " in");
    check_row(row, Length::inch(up_to));
    check_row(row, Length::inch((over + up_to) / 2.0));
    ++checked;
  }
  EXPECT_GE(checked, 11);
}

INSTANTIATE_TEST_SUITE_P(Class, PublishedB4_1,
                         testing::ValuesIn(distinct(read_reference("ansi_b41_fits.csv"), "class")),
                         [](const auto& row) { return row.param; });

TEST(B4_1, TheRunningFitWorkedInATextbookIsMet) {
  // Source: [MOTT] example 13-1, p. 584, seen: 2 in RC5: hole to 2.0018, shaft 1.9963 to 1.9975,
  // clearance 0.0025 to 0.0055 in.
  const Fit got = b4_1_fit(Length::inch(2.0), "RC5");
  EXPECT_NEAR(got.hole.upper.in_inch(), 2.0018, 1e-9);
  EXPECT_NEAR(got.shaft.lower.in_inch(), 1.9963, 1e-9);
  EXPECT_NEAR(got.shaft.upper.in_inch(), 1.9975, 1e-9);
  EXPECT_NEAR(got.least_clearance.in_inch(), 0.0025, 1e-9);
  EXPECT_NEAR(got.greatest_clearance.in_inch(), 0.0055, 1e-9);
}

struct Refusal {
  const char* name;
  double nominal_in;
  const char* cls;
  ErrorCode code;
  const char* says;
};
void PrintTo(const Refusal& row, std::ostream* out) { *out << row.nominal_in << row.cls; }

class B4_1Refused : public testing::TestWithParam<Refusal> {};

TEST_P(B4_1Refused, WithACure) {
  const Refusal& row = GetParam();
  const Error error =
      test::error_of([&] { return b4_1_fit(Length::inch(row.nominal_in), row.cls); });
  EXPECT_EQ(error.code(), row.code);
  EXPECT_THAT(error.what(), testing::HasSubstr(row.says));
}

constexpr ErrorCode kBad = ErrorCode::bad_input;
constexpr ErrorCode kUndefined = ErrorCode::not_in_standard;

INSTANTIATE_TEST_SUITE_P(
    B4_1, B4_1Refused,
    testing::Values(Refusal{"Misspelt", 1, "FM2", kBad, "nearest is FN2"},
                    Refusal{"NoSuchNumber", 1, "RC10", kBad, "RC1 to RC9"},
                    Refusal{"Empty", 1, "", kBad, "is not a class"},
                    Refusal{"Zero", 0, "RC4", kBad, "nominal_mm: need a number greater than 0"},
                    Refusal{"Negative", -1, "RC4", kBad,
                            "nominal_mm: need a number greater than 0"},
                    Refusal{"NaN", std::numeric_limits<double>::quiet_NaN(), "RC4", kBad,
                            "nominal_mm: need a number greater than 0"},
                    Refusal{"TooLarge", 19.7, "RC4", kUndefined, "19.69 in"},
                    Refusal{"Fn3Small", 0.95, "FN3", kUndefined, "there: FN2, FN4"},
                    Refusal{"Lt3Small", 0.24, "LT3", kUndefined, "there: LT2, LT1"}),
    [](const auto& row) { return row.param.name; });

TEST(B4_1, ClassMayBeWrittenSmall) {
  EXPECT_EQ(b4_1_fit(1.0_inch, "fn2").shaft, b4_1_fit(1.0_inch, "FN2").shaft);
}

TEST(B4_1, IsToldFromIso286ByItsLetters) {
  for (const char* cls : {"RC4", "LC11", "LT1", "LN3", "FN2", "FN"}) {
    EXPECT_TRUE(has_b4_1_letters(cls)) << cls;
  }
  for (const char* cls : {"H7/g6", "JS6", "CD7", "rc4", "R", "F7", ""}) {
    EXPECT_FALSE(has_b4_1_letters(cls)) << cls;
  }
}

}  // namespace spotblue::b4_1_test
