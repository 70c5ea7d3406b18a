#include "spotblue/mechanics/stock.hpp"

#include <gtest/gtest.h>

#include <numbers>
#include <vector>

#include "spotblue/base/error.hpp"

namespace spotblue::stock_test {

double margin_of(const StockCheck& check, const std::string& size) {
  for (const StockMargin& margin : check.margins) {
    if (margin.size == size) {
      return margin.margin_mm;
    }
  }
  ADD_FAILURE() << "no margin of " << size;
  return 0.0;
}

TEST(Stock, ABushFromABarNeedsBothSidesCleaned) {
  const StockCheck check =
      check_stock(RoundPart{44.0, 30.0, 60.0}, RoundStock{50.0, 0.0, 64.0}, 1.0);
  EXPECT_NEAR(margin_of(check, "diameter"), 4.0, 1e-12);
  EXPECT_NEAR(margin_of(check, "length"), 2.0, 1e-12);
  EXPECT_TRUE(check.fits());
  EXPECT_NEAR(check.volume_mm3.value(), std::numbers::pi * 625.0 * 64.0, 1e-6);
}

TEST(Stock, ABarWithoutALengthIsAsLongAsNeeded) {
  const StockCheck check = check_stock(RoundPart{44.0, 0.0, 60.0}, RoundStock{46.0, 0.0, {}}, 1.0);
  EXPECT_NEAR(check.least_margin_mm(), 0.0, 1e-12);
  EXPECT_TRUE(check.fits());
  EXPECT_NEAR(check.volume_mm3.value(), std::numbers::pi * 529.0 * 62.0, 1e-6);
}

TEST(Stock, TheBoreOfATubeMustCleanUp) {
  const StockCheck check =
      check_stock(RoundPart{44.0, 30.0, 60.0}, RoundStock{50.0, 29.0, {}}, 1.0);
  EXPECT_NEAR(margin_of(check, "bore"), -1.0, 1e-12);
  EXPECT_FALSE(check.fits());
}

TEST(Stock, ASolidPartDoesNotComeOutOfATube) {
  EXPECT_FALSE(check_stock(RoundPart{44.0, 0.0, 60.0}, RoundStock{50.0, 10.0, {}}, 0.0).fits());
}

TEST(Stock, ARingFromPlateNeedsItsDiameterBothWays) {
  const StockCheck check =
      check_stock(RoundPart{44.0, 30.0, 8.0}, BlockStock{100.0, 45.0, 10.0}, 1.0);
  EXPECT_NEAR(margin_of(check, "width"), -1.0, 1e-12);
  EXPECT_NEAR(margin_of(check, "thickness"), 0.0, 1e-12);
  EXPECT_FALSE(check.fits());
}

TEST(Stock, APlateLiesAnyWayUp) {
  // A ring of 44 x 8 stands on edge in a strip 10 wide, 50 high and 60 long.
  EXPECT_TRUE(check_stock(RoundPart{44.0, 30.0, 8.0}, BlockStock{60.0, 10.0, 50.0}, 1.0).fits());
  // A block of 80 x 25 x 10 comes out of a plate of 12 x 82 x 30, however its sides are called.
  EXPECT_TRUE(
      check_stock(FlatSidedPart{80.0, 25.0, 10.0}, BlockStock{12.0, 82.0, 30.0}, 1.0).fits());
  EXPECT_TRUE(
      check_stock(FlatSidedPart{80.0, 25.0, 10.0}, BlockStock{30.0, 12.0, 82.0}, 1.0).fits());
  EXPECT_FALSE(
      check_stock(FlatSidedPart{80.0, 25.0, 10.0}, BlockStock{82.0, 11.0, 60.0}, 1.0).fits());
}

// 300 less a stub of 20, parts of 62 and 42, and a cut of 3 behind each: 300 - 20 - 104 - 6.
TEST(Stock, LeftOverCountsCutsAndTheStub) {
  EXPECT_NEAR(left_over_mm(300.0, std::vector{62.0, 42.0}, 3.0, 20.0), 170.0, 1e-12);
}
TEST(Stock, LeftOverCountsNoCutBehindTheLastPartWithoutAStub) {
  EXPECT_NEAR(left_over_mm(300.0, std::vector{62.0, 42.0}, 3.0, 0.0), 193.0, 1e-12);
}

TEST(Stock, ABlockFromABarMustLieInItsCircle) {
  // 30 x 40 lies in a circle of 50.
  const StockCheck check =
      check_stock(FlatSidedPart{40.0, 90.0, 30.0}, RoundStock{52.0, 0.0, 92.0}, 1.0);
  EXPECT_NEAR(margin_of(check, "diameter"), 0.0, 1e-12);
  EXPECT_NEAR(margin_of(check, "length"), 0.0, 1e-12);
}

TEST(Stock, APlatesMissingSizeIsNotJudgedAndItsVolumeUnknown) {
  const StockCheck check =
      check_stock(FlatSidedPart{40.0, 90.0, 10.0}, BlockStock{{}, {}, 12.0}, 1.0);
  ASSERT_EQ(check.margins.size(), 1U);
  EXPECT_NEAR(margin_of(check, "thickness"), 0.0, 1e-12);
  EXPECT_FALSE(check.volume_mm3.has_value());
}

TEST(Stock, AnImpossibleTubeIsRefused) {
  EXPECT_THROW((void)check_stock(RoundPart{44.0, 0.0, 60.0}, RoundStock{50.0, 50.0, {}}, 1.0),
               Error);
}

}  // namespace spotblue::stock_test
