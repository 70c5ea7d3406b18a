#include "spotblue/base/outcome.hpp"

#include <gtest/gtest.h>

#include <random>

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

// Decimals have no exact binary form: one in ten such readings was undecided.
TEST(Judge, AReadingOnTheEdgeOfTheAcceptanceZoneIsInsideItWhateverItsDecimals) {
  std::mt19937 random(13);
  std::uniform_int_distribution<int> micrometres(1, 300'000);
  std::uniform_int_distribution<int> uncertainties(1, 20);
  for (int i = 0; i < 3000; ++i) {
    const int lower = micrometres(random);
    const int u = uncertainties(random);
    const int upper = lower + 2 * u + uncertainties(random);
    const Limits limits{Length::mm(lower / 1000.0), Length::mm(upper / 1000.0)};
    const Length uncertainty = Length::mm(u / 1000.0);
    for (const int reading : {lower + u, upper - u}) {
      EXPECT_EQ(judge(Length::mm(reading / 1000.0), uncertainty, limits), Outcome::conforming)
          << reading << " +- " << u << " in " << lower << " to " << upper;
    }
    EXPECT_EQ(judge(Length::mm((upper - u) / 1000.0 + 1e-9), uncertainty, limits),
              Outcome::undecided);
    EXPECT_EQ(judge(Length::mm((upper + u) / 1000.0), uncertainty, limits), Outcome::undecided);
  }
}

TEST(Judge, RefusesReversedLimits) {
  EXPECT_THROW((void)judge(20_mm, 0_mm, Limits{2_mm, 1_mm}), Error);
}

TEST(Margin, IsTheDistanceToTheNearerLimitAndNegativeOutside) {
  EXPECT_NEAR(margin(Limits{19.970_mm, 19.974_mm}, kLimits).in_um(), 3.0, 1e-9);
  EXPECT_NEAR(margin(Limits{19.960_mm, 19.974_mm}, kLimits).in_um(), -7.0, 1e-9);
}

}  // namespace spotblue::outcome_test
