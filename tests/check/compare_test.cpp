#include "spotblue/check/compare.hpp"

#include <gtest/gtest.h>

#include <vector>

#include "spotblue/base/error.hpp"

namespace spotblue::compare_test {

Finding finding(const char* kind, std::vector<Reference> about, Outcome outcome) {
  Finding result;
  result.kind = kind;
  result.about = std::move(about);
  result.outcome = outcome;
  return result;
}

CheckResult plan_with(std::vector<Finding> findings) {
  CheckResult plan;
  plan.findings = std::move(findings);
  return plan;
}

Finding with_margin(double wanted_min, double wanted_max, double margin) {
  Finding result = finding("radial fit", {"A: bore 5", "B: outside 5"}, Outcome::conforming);
  result.wanted = {{"clearance", millimetres(wanted_min), RangeEnd::least},
                   {"clearance", millimetres(wanted_max), RangeEnd::greatest}};
  result.margin = {{"clearance", millimetres(margin)}};
  return result;
}

TEST(Compare, FindingsAreMatchedWhereverTheirPartsStand) {
  const std::vector<CheckResult> plans{
      plan_with({finding("radial fit", {"Back group/Wheel: bore", "Stud: journal"},
                         Outcome::conforming)}),
      plan_with({finding("radial fit", {"Front group/Wheel: bore", "Stud: journal"},
                         Outcome::nonconforming)})};
  const Comparison comparison = compare_plans(plans);
  ASSERT_EQ(comparison.rows.size(), 1U);
  EXPECT_EQ(comparison.rows[0].about, "Wheel: bore / Stud: journal");
  EXPECT_EQ(comparison.rows[0].findings[0], 0U);
  EXPECT_EQ(comparison.rows[0].findings[1], 0U);
}

TEST(Compare, OfSeveralAlikeTheFirstGoesWithTheFirst) {
  const auto screws = [](int count) {
    return plan_with(std::vector<Finding>(
        static_cast<std::size_t>(count),
        finding("thread", {"Cover: bore 4", "Screw: outside 5"}, Outcome::conforming)));
  };
  const std::vector<CheckResult> plans{screws(2), screws(3)};
  const Comparison comparison = compare_plans(plans);
  ASSERT_EQ(comparison.rows.size(), 3U);
  EXPECT_EQ(comparison.rows[1].findings[1], 1U);
  EXPECT_FALSE(comparison.rows[2].findings[0].has_value());
}

TEST(Compare, APlanThatWasNotLookedAtWholeDoesNotStand) {
  std::vector<CheckResult> plans{plan_with({}), plan_with({with_margin(0.0, 0.1, 0.01)})};
  plans[1].look.not_looked_at.push_back({"press.step", "reading it was not done after 1 s"});
  const Comparison comparison = compare_plans(plans);
  EXPECT_EQ(comparison.best, 0U);
  EXPECT_FALSE(comparison.plans[1].whole);
  plans[0].look.not_looked_at = plans[1].look.not_looked_at;
  EXPECT_FALSE(compare_plans(plans).best.has_value());
}

TEST(Compare, RowsThatWouldReadAlikeAreToldApart) {
  const auto bored = [](const char* place) {
    return finding("radial fit", {std::string(place) + "Box: bore", "Shaft: outside"},
                   Outcome::conforming);
  };
  const std::vector<CheckResult> plans{plan_with({bored("Right/")}),
                                       plan_with({bored("Right/"), bored("Left/")})};
  const std::vector<ComparedRow> rows = compare_plans(plans).rows;
  ASSERT_EQ(rows.size(), 2U);
  EXPECT_EQ(rows[0].about, "Right/Box: bore / Shaft: outside");
  EXPECT_EQ(rows[1].about, "Left/Box: bore / Shaft: outside");
  const std::vector<CheckResult> same{plan_with({bored(""), bored("")}), plan_with({})};
  EXPECT_EQ(compare_plans(same).rows[1].about, "Box: bore / Shaft: outside (2)");
}

// 0.01 of margin in limits 0.1 apart: 0.01 of 0.05, a fifth.
TEST(Compare, AMarginIsAPartOfHalfItsLimits) {
  EXPECT_DOUBLE_EQ(margin_share(with_margin(0.1, 0.2, 0.01)).value(), 0.2);
}

TEST(Compare, AMarginBelowOneLimitIsAPartOfThatLimit) {
  Finding pressure = finding("plain bearing", {"A", "B"}, Outcome::conforming);
  pressure.wanted = {{"pressure_speed", megapascal_metres_per_second(2.0), RangeEnd::greatest}};
  pressure.margin = {{"pressure_speed", megapascal_metres_per_second(0.5)}};
  EXPECT_DOUBLE_EQ(margin_share(pressure).value(), 0.25);
}

TEST(Compare, TheWidestLeastMarginWinsAmongPlansWithNothingNonconforming) {
  const std::vector<CheckResult> plans{
      plan_with({with_margin(0.0, 1.0, 0.4), with_margin(0.0, 1.0, 0.1)}),
      plan_with({with_margin(0.0, 1.0, 0.2)}),
      plan_with({with_margin(0.0, 1.0, 0.5), finding("foul", {"A", "B"}, Outcome::nonconforming)})};
  const Comparison comparison = compare_plans(plans);
  EXPECT_EQ(comparison.best, 1U);
  EXPECT_EQ(comparison.plans[0].least_margin->finding, 1U);
}

TEST(Compare, APlanWithOpenFindingsComesAfterOneWithout) {
  const std::vector<CheckResult> plans{
      plan_with({with_margin(0.0, 1.0, 0.4), finding("end play", {"A"}, Outcome::undecided)}),
      plan_with({with_margin(0.0, 1.0, 0.1)})};
  EXPECT_EQ(compare_plans(plans).best, 1U);
}

TEST(Compare, NoPlanStandsWhenEachHasSomethingNonconforming) {
  const Finding foul = finding("foul", {"A", "B"}, Outcome::nonconforming);
  const std::vector<CheckResult> plans{plan_with({foul}), plan_with({foul})};
  EXPECT_FALSE(compare_plans(plans).best.has_value());
}

TEST(Compare, OnePlanAloneIsRefused) {
  const std::vector<CheckResult> plans{plan_with({})};
  EXPECT_THROW((void)compare_plans(plans), Error);
}

}  // namespace spotblue::compare_test
