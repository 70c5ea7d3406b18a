#include "spotblue/standards/general_tolerances.hpp"

#include <gtest/gtest.h>

#include <limits>
#include <ostream>

#include "spotblue/base/error.hpp"
#include "support/csv.hpp"
#include "support/thrown.hpp"

namespace spotblue::general_tolerances_test {

using test::CsvRow;
using test::number;
using test::read_reference;

// One printed cell; source in the file (ISO2768). Table 2 has no upper end: 1000 stands for
// it.
struct PrintedTolerance {
  int table = 1;
  std::string letter;
  double over = 0.0, up_to = 0.0;
  std::optional<double> deviation;
};

void PrintTo(const PrintedTolerance& cell, std::ostream* out) {
  *out << "table " << cell.table << ", " << cell.letter << ", over " << cell.over << " up to "
       << cell.up_to;
}

std::vector<PrintedTolerance> printed() {
  std::vector<PrintedTolerance> cells;
  for (const CsvRow& row : read_reference("iso2768_1.csv")) {
    PrintedTolerance cell{static_cast<int>(number(row, "table")), row.at("class"),
                          number(row, "over_mm"), number(row, "up_to_mm"), std::nullopt};
    if (!row.at("deviation_mm").empty()) {
      cell.deviation = number(row, "deviation_mm");
    }
    cells.push_back(cell);
  }
  return cells;
}

Length deviation_of(int table, double size, GeneralTolerance tolerance) {
  return table == 1 ? general_deviation(Length::mm(size), tolerance)
                    : broken_edge_deviation(Length::mm(size), tolerance);
}

class GeneralTolerances : public testing::TestWithParam<PrintedTolerance> {};

TEST_P(GeneralTolerances, AreAsPrintedFromJustOverTheStepToItsEnd) {
  const PrintedTolerance& cell = GetParam();
  const GeneralTolerance tolerance = parse_general_tolerance(cell.letter);
  const double first = cell.over == 0.5 ? cell.over : cell.over * (1.0 + 1e-12);
  for (const double size : {first, 0.5 * (cell.over + cell.up_to), cell.up_to}) {
    if (cell.deviation) {
      EXPECT_DOUBLE_EQ(deviation_of(cell.table, size, tolerance).in_mm(), *cell.deviation) << size;
    } else {
      EXPECT_THROW((void)deviation_of(cell.table, size, tolerance), Error) << size;
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Iso2768Part1, GeneralTolerances, testing::ValuesIn(printed()));

TEST(GeneralTolerance, UnderHalfAMillimetreIsNotInTheStandard) {
  const Error error =
      test::error_of([&] { return general_deviation(Length::mm(0.49), GeneralTolerance::medium); });
  EXPECT_EQ(error.code(), ErrorCode::not_in_standard);
}

TEST(GeneralTolerance, OverFourMetresIsNotInTheStandard) {
  EXPECT_THROW((void)general_deviation(Length::mm(4000.1), GeneralTolerance::coarse), Error);
}

TEST(GeneralTolerance, ALengthMustBeAPositiveNumber) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  for (const double size : {0.0, -3.0, nan}) {
    const Error error =
        test::error_of([&] { return general_deviation(Length::mm(size), GeneralTolerance::fine); });
    EXPECT_EQ(error.code(), ErrorCode::bad_input);
  }
}

TEST(GeneralTolerance, LettersOutsideTheStandardAreRefused) {
  EXPECT_THROW((void)parse_general_tolerance("g"), Error);
  EXPECT_THROW((void)parse_general_tolerance("M"), Error);
  EXPECT_THROW((void)parse_general_tolerance(""), Error);
}

}  // namespace spotblue::general_tolerances_test
