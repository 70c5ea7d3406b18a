// Every row of the published ISO 286 tables in tests/reference (sources: SOURCES.md there).
#include <gtest/gtest.h>

#include <cctype>
#include <map>
#include <set>
#include <stdexcept>
#include <string>
#include <vector>

#include "spotblue/standards/iso286.hpp"
#include "support/csv.hpp"

namespace spotblue::iso286_table_test {

using test::CsvRow;
using test::distinct;
using test::number;
using test::read_reference;

constexpr double kRounding_um = 1e-6;  // tables are whole or half micrometres

std::string trace(const CsvRow& row) {
  std::string text;
  for (const auto& [column, value] : row) {
    text.append(column).append("=").append(value).append(" ");
  }
  return text;
}

// First nominal of a step, a middle one, and its end.
std::vector<Length> sizes_of(const CsvRow& row) {
  const double over = number(row, "over_mm");
  const double up_to = number(row, "upto_mm");
  return {Length::mm(over + 0.4 * (up_to - over)), Length::mm(up_to)};
}

class PublishedLimits : public testing::TestWithParam<std::string> {};

std::string letters_of(const std::string& cls) {
  return cls.substr(0, cls.find_first_of("0123456789"));
}

std::vector<std::string> letters_with_limits() {
  std::set<std::string> letters;
  for (const CsvRow& row : read_reference("iso286_limits_examples.csv")) {
    letters.insert(letters_of(row.at("class")));
  }
  return {letters.begin(), letters.end()};
}

TEST_P(PublishedLimits, EveryRowOfTheLetterIsMet) {
  int checked = 0;
  for (const CsvRow& row : read_reference("iso286_limits_examples.csv")) {
    const std::string cls = row.at("class");
    if (letters_of(cls) != GetParam()) {
      continue;
    }
    SCOPED_TRACE(trace(row));
    for (const std::string column : {"example_nominal_mm", "upto_mm"}) {
      const Length nominal = Length::mm(number(row, column));
      const Deviations got = deviations(nominal, cls);
      EXPECT_NEAR(got.upper.in_um(), number(row, "upper_um"), kRounding_um);
      EXPECT_NEAR(got.lower.in_um(), number(row, "lower_um"), kRounding_um);
      const Limits size = limits(nominal, cls);
      EXPECT_NEAR((size.upper - nominal).in_um(), number(row, "upper_um"), kRounding_um);
      EXPECT_NEAR((size.lower - nominal).in_um(), number(row, "lower_um"), kRounding_um);
    }
    EXPECT_EQ(size_kind(cls) == SizeKind::hole, row.at("kind") == "hole");
    ++checked;
  }
  EXPECT_GT(checked, 0);
}

INSTANTIATE_TEST_SUITE_P(Letter, PublishedLimits, testing::ValuesIn(letters_with_limits()),
                         [](const auto& row) { return row.param; });

class PublishedGrades : public testing::TestWithParam<std::string> {};

TEST_P(PublishedGrades, EveryRowOfTheGradeIsMet) {
  int checked = 0;
  for (const CsvRow& row : read_reference("iso286_it.csv")) {
    if (row.at("grade") != GetParam()) {
      continue;
    }
    SCOPED_TRACE(trace(row));
    for (const Length nominal : sizes_of(row)) {
      EXPECT_NEAR(it_value(nominal, GetParam()).in_um(), number(row, "value_um"), kRounding_um);
    }
    ++checked;
  }
  EXPECT_GE(checked, 13);
}

INSTANTIATE_TEST_SUITE_P(Grade, PublishedGrades,
                         testing::ValuesIn(distinct(read_reference("iso286_it.csv"), "grade")),
                         [](const auto& row) { return row.param; });

// Grades a row of the deviation tables is in force for, as its condition column says.
std::vector<int> grades_of(const std::string& condition) {
  static const std::map<std::string, std::vector<int>> known = {
      {"all", {5, 6, 7, 11, 13}},
      {"all (not for sizes <= 1 mm)", {9, 11, 13}},
      {"IT5,IT6", {5, 6}},
      {"IT6", {6}},
      {"IT7", {7}},
      {"IT8", {8}},
      {"IT4..IT7", {4, 5, 6, 7}},
      {"<=IT3 or >=IT8", {1, 3, 8, 11}},
      {"IT6..IT16", {6, 7, 9, 16}},
      {"IT6..IT16 (no delta)", {6, 7, 9, 16}},
      {"<=IT8 (add delta)", {3, 4, 5, 6, 7, 8}},
      {">IT8", {9, 10, 11}},
      {"<=IT7 (add delta)", {3, 4, 5, 6, 7}},
      {">IT7", {8, 9, 10}},
      {"IT6 special case", {6}},
  };
  return known.at(condition);
}

// The delta of ISO 286-1 table 3 as printed, by step end and grade.
double delta_um(const CsvRow& hole, int grade) {
  for (const CsvRow& row : read_reference("iso286_hole_delta.csv")) {
    if (number(row, "over_mm") <= number(hole, "over_mm") &&
        number(row, "upto_mm") >= number(hole, "upto_mm") &&
        row.at("grade") == "IT" + std::to_string(grade)) {
      return number(row, "delta_um");
    }
  }
  throw std::runtime_error("no delta");
}

// M6 over 250 up to 315 mm has a row of its own.
bool overruled(const CsvRow& row, int grade) {
  return row.at("letter") == "M" && grade == 6 && number(row, "over_mm") >= 250.0 &&
         number(row, "upto_mm") <= 315.0 && row.at("grade_condition") != "IT6 special case";
}

void check_deviation(const CsvRow& row, int grade) {
  const std::string cls = row.at("letter") + std::to_string(grade);
  SCOPED_TRACE(cls);
  for (const Length nominal : sizes_of(row)) {
    const Deviations got = deviations(nominal, cls);
    const double width = it_value(nominal, std::to_string(grade)).in_um();
    EXPECT_NEAR((got.upper - got.lower).in_um(), width, kRounding_um);
    if (row.at("letter") == "JS" || row.at("letter") == "js") {
      EXPECT_NEAR(got.upper.in_um(), width / 2.0, kRounding_um);
      continue;
    }
    const bool delta = row.at("grade_condition").find("(add delta)") != std::string::npos;
    const double expected = number(row, "value_um") + (delta ? delta_um(row, grade) : 0.0);
    const bool upper = row.at("which") == "ES" || row.at("which") == "es";
    EXPECT_NEAR((upper ? got.upper : got.lower).in_um(), expected, kRounding_um);
  }
}

class PublishedDeviations : public testing::TestWithParam<std::string> {};

TEST_P(PublishedDeviations, EveryRowOfTheLetterIsMet) {
  const bool hole = std::isupper(static_cast<unsigned char>(GetParam().front())) != 0;
  int checked = 0;
  for (const CsvRow& row :
       read_reference(hole ? "iso286_hole_deviations.csv" : "iso286_shaft_deviations.csv")) {
    if (row.at("letter") != GetParam()) {
      continue;
    }
    SCOPED_TRACE(trace(row));
    for (const int grade : grades_of(row.at("grade_condition"))) {
      if (!overruled(row, grade)) {
        check_deviation(row, grade);
      }
    }
    ++checked;
  }
  EXPECT_GE(checked, 3);
}

INSTANTIATE_TEST_SUITE_P(Hole, PublishedDeviations,
                         testing::ValuesIn(distinct(read_reference("iso286_hole_deviations.csv"),
                                                    "letter")),
                         [](const auto& row) { return row.param; });
INSTANTIATE_TEST_SUITE_P(Shaft, PublishedDeviations,
                         testing::ValuesIn(distinct(read_reference("iso286_shaft_deviations.csv"),
                                                    "letter")),
                         [](const auto& row) { return row.param; });

}  // namespace spotblue::iso286_table_test
