// Stacks worked in print; tests/reference/stack_examples.csv names source and digits of each,
// tests/reference/SOURCES.md the sources.

#include <gtest/gtest.h>

#include <cmath>
#include <ostream>
#include <sstream>

#include "spotblue/mechanics/stack.hpp"
#include "support/csv.hpp"

namespace spotblue::stack_examples_test {

using test::CsvRow;
using test::number;

struct PrintedStack {
  std::string name;
  std::vector<StackDimension> loop;
  double unit_mm = 1.0;
  double rounding = 0.0;  // half a digit of the print, in its unit
  CsvRow row;
};

void PrintTo(const PrintedStack& stack, std::ostream* out) { *out << stack.name; }

// "+6.520:0.010;-1.500:0.001": sense, nominal, half tolerance.
std::vector<StackDimension> parse_loop(const std::string& text, double unit_mm) {
  std::vector<StackDimension> loop;
  std::istringstream all(text);
  for (std::string entry; std::getline(all, entry, ';');) {
    const auto colon = entry.find(':');
    const Length size = Length::mm(unit_mm * std::stod(entry.substr(1, colon - 1)));
    const Length half = Length::mm(unit_mm * std::stod(entry.substr(colon + 1)));
    loop.push_back({entry,
                    size,
                    {size - half, size + half},
                    entry.front() == '+' ? StackSense::opens : StackSense::closes});
  }
  return loop;
}

std::vector<PrintedStack> printed() {
  std::vector<PrintedStack> stacks;
  for (const CsvRow& row : test::read_reference("stack_examples.csv")) {
    PrintedStack stack;
    stack.name = row.at("example");
    stack.unit_mm = row.at("unit") == "inch" ? 25.4 : 1.0;
    stack.loop = parse_loop(row.at("dimensions"), stack.unit_mm);
    stack.rounding = 0.5 * std::pow(10.0, -number(row, "digits")) + 1e-9;
    stack.row = row;
    stacks.push_back(stack);
  }
  return stacks;
}

class PrintedStacks : public testing::TestWithParam<PrintedStack> {
 protected:
  // The printed number, where there is one, within its rounding.
  void expect(const std::string& column, Length got) const {
    const PrintedStack& stack = GetParam();
    if (!stack.row.at(column).empty()) {
      EXPECT_NEAR(got.in_mm() / stack.unit_mm, number(stack.row, column), stack.rounding) << column;
    }
  }
};

TEST_P(PrintedStacks, AreMetWithinTheRoundingOfThePrint) {
  const std::vector<StackDimension>& loop = GetParam().loop;
  expect("nominal", nominal_gap(loop));
  expect("worst_half", 0.5 * worst_case_gap(loop).width());
  expect("rss_half", 0.5 * root_sum_square_gap(loop).width());
}

INSTANTIATE_TEST_SUITE_P(Printed, PrintedStacks, testing::ValuesIn(printed()));

// A length that warms and how much longer it gets.
struct WarmedLength {
  const char* name;
  double length = 0.0, expansion = 0.0, warmer = 0.0, longer = 0.0, rounding = 0.0;
};

void PrintTo(const WarmedLength& row, std::ostream* out) { *out << row.name; }

class WarmedLengths : public testing::TestWithParam<WarmedLength> {};

TEST_P(WarmedLengths, GrowByTheirExpansion) {
  const WarmedLength& printed = GetParam();
  const Length length = Length::inch(printed.length);
  const std::vector<StackDimension> warm = warmed(std::vector<StackDimension>{{"bar",
                                                                               length,
                                                                               {length, length},
                                                                               StackSense::opens,
                                                                               StackSpread::uniform,
                                                                               printed.expansion,
                                                                               printed.warmer}});
  EXPECT_NEAR((warm.front().limits.upper - length).in_inch(), printed.longer, printed.rounding);
}

// By hand: 24 x 13.0e-6 x 130 = 0.04056; 0.07003 x 2.4e-5 x 17.849 = 0.0000299992.
INSTANTIATE_TEST_SUITE_P(ByHand, WarmedLengths,
                         testing::Values(WarmedLength{"24 in of aluminium by 130 F", 24.0, 13.0e-6,
                                                      130.0, 0.04056, 1e-9},
                                         WarmedLength{"a small shaft", 0.07003, 2.4e-5, 17.849,
                                                      0.0000299992, 0.5e-10}));

}  // namespace spotblue::stack_examples_test
