#include "report/text_table.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace spotblue::test::text_table_test {

TEST(TextTable, AlignsColumnsUnderTheirHeadings) {
  TextTable table({{"part"}, {"size", Align::right}});
  table.add({"Wheel", "44.0000"});
  table.add({"Pin", "8.0000"});
  EXPECT_EQ(table.text(1),
            " part      size\n"
            " Wheel  44.0000\n"
            " Pin     8.0000\n");
}

TEST(TextTable, CountsRowsThatReadAlike) {
  TextTable table({{"part"}});
  table.add({"Bolt"});
  table.add({"Nut"});
  table.add({"Bolt"});
  EXPECT_EQ(table.text(0), "part\nBolt  x 2\nNut\n");
}

TEST(TextTable, ANameWithoutEndMakesNoRowWithoutEnd) {
  TextTable table({{"part"}, {"size"}});
  table.add({std::string(100'000, 'x'), "1"});
  table.add({std::string(100'000, 'x') + "y", "1"});
  table.add({"Bolt", "8"});
  const std::string text = table.text(0);
  EXPECT_EQ(std::count(text.begin(), text.end(), '\n'), 4);
  EXPECT_LT(text.size(), 5000U);
}

TEST(TextTable, LeavesOutColumnsWithoutAnyCell) {
  TextTable table({{"part"}, {"remark"}, {"size"}});
  table.add({"Bolt", "", "8"});
  EXPECT_EQ(table.text(0), "part  size\nBolt  8\n");
}

TEST(TextTable, UmlautsCountAsOneLetter) {
  TextTable table({{"part"}, {"size"}});
  table.add({"B\xC3\xBC\x63hse", "1"});
  table.add({"Buchse", "2"});
  EXPECT_EQ(table.text(0), "part    size\nB\xC3\xBC\x63hse  1\nBuchse  2\n");
}

TEST(TextTable, IsEmptyWithoutRows) { EXPECT_EQ(TextTable({{"part"}}).text(2), ""); }

}  // namespace spotblue::test::text_table_test
