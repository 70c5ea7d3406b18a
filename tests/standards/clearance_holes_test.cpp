#include "spotblue/standards/clearance_holes.hpp"

#include <gtest/gtest.h>

#include "support/csv.hpp"

namespace spotblue::clearance_holes_test {

using test::CsvRow;
using test::number;
using test::read_reference;

// [ISO273]; see clearance_holes_iso273.csv.
TEST(ClearanceHoles, EveryPrintedHoleIsMet) {
  int checked = 0;
  for (const CsvRow& row : read_reference("clearance_holes_iso273.csv")) {
    const auto hole = clearance_hole(Length::mm(number(row, "thread_mm")));
    ASSERT_TRUE(hole.has_value()) << row.at("thread_mm");
    const auto check = [&](const std::string& column, Length got) {
      if (!row.at(column).empty()) {
        EXPECT_NEAR(got.in_mm(), number(row, column), 1e-9) << row.at("thread_mm") << column;
        ++checked;
      }
    };
    check("fine_mm", hole->fine);
    check("medium_mm", hole->medium);
    check("coarse_mm", hole->coarse);
  }
  EXPECT_EQ(checked, 105);
}

TEST(ClearanceHoles, SeriesWidenFromFineToCoarseAndWithTheThread) {
  Length last = Length();
  for (const ClearanceHole& row : clearance_holes()) {
    EXPECT_LT(last, row.thread);
    EXPECT_LT(row.thread, row.fine);
    EXPECT_LT(row.fine, row.medium);
    EXPECT_LT(row.medium, row.coarse);
    last = row.thread;
  }
}

TEST(ClearanceHoles, SizeThatTheStandardDoesNotHaveGivesNothing) {
  EXPECT_FALSE(clearance_hole(11.3_mm).has_value());
}

}  // namespace spotblue::clearance_holes_test
