#include "spotblue/mechanics/stock.hpp"

#include <gtest/gtest.h>

#include <numbers>

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
