#include "spotblue/base/length.hpp"

#include <gtest/gtest.h>

#include <type_traits>

namespace spotblue::length_test {

using namespace literals;

TEST(Length, ABareNumberIsNoLength) {
  static_assert(!std::is_convertible_v<double, Length>);
  static_assert(!std::is_constructible_v<Length, double>);
  static_assert(!std::is_convertible_v<Length, double>);
}

TEST(Length, AnInchIsExactly25Point4Millimetres) {
  // Source: ISO 80000-3; the international inch is 25.4 mm by definition.
  EXPECT_EQ(Length::inch(1.0), 25.4_mm);
  EXPECT_EQ((50.8_mm).in_inch(), 2.0);
}

TEST(Length, MicrometresAndMillimetresAgree) {
  EXPECT_DOUBLE_EQ((25_um).in_mm(), 0.025);
  EXPECT_DOUBLE_EQ((0.025_mm).in_um(), 25.0);
}

TEST(Diameter, IsTwiceItsRadius) {
  EXPECT_EQ(diameter_of(Radius(12.5_mm)), Diameter(25_mm));
  EXPECT_EQ(radius_of(Diameter(25_mm)), Radius(12.5_mm));
}

}  // namespace spotblue::length_test
