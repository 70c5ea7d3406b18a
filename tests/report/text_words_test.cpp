#include "report/text_words.hpp"

#include <gtest/gtest.h>

#include <numbers>

namespace spotblue::test::text_words_test {

TEST(Words, CountsAreGroupedInThousands) {
  EXPECT_EQ(count_text(0), "0");
  EXPECT_EQ(count_text(999), "999");
  EXPECT_EQ(count_text(1000), "1,000");
  EXPECT_EQ(count_text(45'000'000), "45,000,000");
}

TEST(Words, DirectionAlongAnAxisIsNamed) {
  EXPECT_EQ(direction_text({0, 0, -1}), "along z");
  EXPECT_EQ(direction_text({0.6, 0, 0.8}), "along 0.6, 0, 0.8");
}

TEST(Words, NegativeNothingHasNoSign) {
  EXPECT_EQ(length_cell(-1e-9, LengthUnit::mm), "0.0000");
  EXPECT_EQ(angle_cell(-1e-9), "0.000");
}

TEST(Words, AnglesAreInDegrees) { EXPECT_EQ(angle_cell(std::numbers::pi / 4), "45.000"); }

// By hand: 1 in2 = 645.16 mm2, 1 in3 = 16387.064 mm3.
TEST(Words, AreasAndVolumesConvert) {
  EXPECT_EQ(area_cell(645.16, LengthUnit::inch), "1.0000");
  EXPECT_EQ(area_cell(645.16, LengthUnit::mm), "645.16");
  EXPECT_EQ(volume_cell(16387.064, LengthUnit::inch), "1");
}

}  // namespace spotblue::test::text_words_test
