// How near two solids come that no seat joins. Distances by hand.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

#include "check/mocked_up.hpp"
#include "support/findings.hpp"

namespace spotblue::mocked_keep_off_test {

using test::number;

// Two rounds of 20 whose axes are 24.5 apart; the second begins 3 above the end of the first:
// their edges are 4.5 apart across and 3 along, 5.408 apart.
constexpr const char* kRounds = R"(
title = "Two rounds"
[[line]]
name = "one"
at = [0, 0, 0]
[[line]]
name = "other"
at = [24.5, 0, 0]
[[part]]
name = "Low"
kind = "turned"
outside = [{ diameter = 20, length = 10 }]
[[part]]
name = "High"
kind = "turned"
outside = [{ diameter = 20, length = 10 }]
[[place]]
part = "Low"
line = "one"
at = 0
[[place]]
part = "High"
line = "other"
at = 13
)";

Finding kept_off(double least) {
  const CheckResult result = test::checked(
      kRounds, "[[keep_off]]\nparts = [\"Low\", \"High\"]\nleast = " + std::to_string(least) +
                   "\nreason = \"one is live\"\n");
  return test::of_kind(result, "keep off").at(0);
}

TEST(KeepOffOfSolids, CountsTheTrueLeastDistanceWhereNoSeatIs) {
  const Finding finding = kept_off(5.3);
  EXPECT_EQ(finding.outcome, Outcome::conforming);
  EXPECT_NEAR(number(finding.found, "gap_mm"), 5.408327, 1e-5);
  EXPECT_NEAR(number(finding.found, "least_distance_drawn_mm"), 5.408327, 1e-5);
}

TEST(KeepOffOfSolids, OfCornersTooNearDoesNotConform) {
  EXPECT_EQ(kept_off(5.5).outcome, Outcome::nonconforming);
}

}  // namespace spotblue::mocked_keep_off_test
