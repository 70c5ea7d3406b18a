#include "spotblue/standards/common_fits.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string_view>
#include <vector>

#include "spotblue/base/error.hpp"

namespace spotblue::common_fits_test {

bool has(const std::vector<CommonFit>& fits, std::string_view name) {
  return std::any_of(fits.begin(), fits.end(),
                     [name](const CommonFit& entry) { return entry.name == name; });
}

// By hand from ISO 286: at 44 mm H8/f7 allows 25 to 89 um, H7/g6 9 to 50, H7/h6 0 to 41.
TEST(CommonFits, ThoseWhoseRangeHoldsTheClearanceAreNamed) {
  const auto fits = common_fits_with_clearance(44_mm, 45_um);
  EXPECT_TRUE(has(fits, "H8/f7"));
  EXPECT_TRUE(has(fits, "H7/g6"));
  EXPECT_FALSE(has(fits, "H7/h6"));
  EXPECT_FALSE(has(fits, "H7/s6"));
}

TEST(CommonFits, InterferenceNamesPressFits) {
  const auto fits = common_fits_with_clearance(44_mm, -40_um);
  EXPECT_TRUE(has(fits, "H7/s6"));
  EXPECT_FALSE(has(fits, "H7/g6"));
}

// By hand from B4.1: at 1 in FN2 is 0.6 to 1.9 thou tight, FN4 1.0 to 2.3.
TEST(CommonFits, InchClassesAreNamedFromB4_1) {
  const auto fits = common_b4_1_fits_with_clearance(1.0_inch, Length::inch(-0.0008));
  EXPECT_TRUE(has(fits, "FN2"));
  EXPECT_FALSE(has(fits, "FN4"));
}

TEST(CommonFits, BestCentredComesFirstAndEachHoldsTheClearance) {
  for (const auto with_clearance : {common_fits_with_clearance, common_b4_1_fits_with_clearance}) {
    for (int um = -120; um <= 300; um += 7) {
      const Length clearance = Length::um(um);
      double last = 0.0;
      for (const CommonFit& entry : with_clearance(44_mm, clearance)) {
        EXPECT_LE(entry.fit.least_clearance, clearance) << entry.name;
        EXPECT_GE(entry.fit.greatest_clearance, clearance) << entry.name;
        EXPECT_FALSE(entry.duty.empty());
        const Length middle = (entry.fit.least_clearance + entry.fit.greatest_clearance) / 2.0;
        const Length width = entry.fit.greatest_clearance - entry.fit.least_clearance;
        const double off = std::abs((clearance - middle) / width);
        EXPECT_GE(off, last);
        last = off;
      }
    }
  }
}

TEST(CommonFits, SizeOutsideTheTablesHasNone) {
  EXPECT_TRUE(common_fits_with_clearance(4000_mm, 0_um).empty());
  EXPECT_TRUE(common_b4_1_fits_with_clearance(600_mm, 0_um).empty());
}

TEST(CommonFits, SizeOrClearanceThatIsNoNumberIsRefused) {
  const Length nothing = Length::mm(std::numeric_limits<double>::quiet_NaN());
  EXPECT_THROW((void)common_fits_with_clearance(44_mm, nothing), Error);
  EXPECT_THROW((void)common_fits_with_clearance(nothing, 0_um), Error);
  EXPECT_THROW((void)common_b4_1_fits_with_clearance(0_mm, 0_um), Error);
}

}  // namespace spotblue::common_fits_test
