#include "spotblue/base/outcome.hpp"

#include <gtest/gtest.h>

#include "spotblue/base/error.hpp"

namespace spotblue::outcome_test {

using namespace literals;

constexpr Limits kLimits{19.967_mm, 19.980_mm};

// Source: ISO 14253-1, decision rules: the uncertainty shrinks both the zone of proven conformity
// and the zone of proven nonconformity. Numbers worked by hand.
TEST(Judge, ConformsWhenTheWholeUncertaintyRangeIsInside) {
  EXPECT_EQ(judge(19.974_mm, 0.005_mm, kLimits), Outcome::conforming);
}

TEST(Judge, IsUndecidedWhenTheUncertaintyRangeCrossesALimit) {
  EXPECT_EQ(judge(19.969_mm, 0.005_mm, kLimits), Outcome::undecided);
  EXPECT_EQ(judge(19.983_mm, 0.005_mm, kLimits), Outcome::undecided);
}

TEST(Judge, DoesNotConformWhenTheWholeUncertaintyRangeIsOutside) {
  EXPECT_EQ(judge(19.986_mm, 0.005_mm, kLimits), Outcome::nonconforming);
}

TEST(Judge, IsNeverUndecidedWithoutUncertainty) {
  EXPECT_EQ(judge(19.980_mm, 0_mm, kLimits), Outcome::conforming);
  EXPECT_EQ(judge(19.9801_mm, 0_mm, kLimits), Outcome::nonconforming);
}

TEST(Judge, RefusesReversedLimits) {
  EXPECT_THROW((void)judge(20_mm, 0_mm, Limits{2_mm, 1_mm}), Error);
}

TEST(Margin, IsTheDistanceToTheNearerLimitAndNegativeOutside) {
  EXPECT_NEAR(margin(Limits{19.970_mm, 19.974_mm}, kLimits).in_um(), 3.0, 1e-9);
  EXPECT_NEAR(margin(Limits{19.960_mm, 19.974_mm}, kLimits).in_um(), -7.0, 1e-9);
}

}  // namespace spotblue::outcome_test
