#include "spotblue/report/compare_text.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>

#include "report/example_look.hpp"
#include "report/shown_cells.hpp"

namespace spotblue::test::compare_text_test {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;

CheckResult conforming_plan(double margin_mm) {
  CheckResult plan = example_check();
  plan.job.title = "Second plan";
  plan.findings.resize(1);
  plan.findings[0].outcome = Outcome::conforming;
  plan.findings[0].margin = {{"clearance", millimetres(margin_mm)}};
  return plan;
}

std::string compared(const std::vector<CheckResult>& plans) {
  return compare_text(compare_plans(plans), plans, {});
}

std::string last_line(const std::string& text) {
  return text.substr(text.rfind('\n', text.size() - 2) + 1);
}

std::string verdict_line(const std::string& text) {
  return last_line(text.substr(0, text.size() - last_line(text).size()));
}

TEST(CompareText, ARowShowsOutcomeAndMarginOfEachPlan) {
  const std::string text = compared({example_check(), conforming_plan(0.0041)});
  EXPECT_THAT(shown_cells(text, "radial fit"),
              ElementsAre("radial fit: Wheel: bore 44 / Stud: outside 44.035",
                          "nonconforming -0.0090 mm", "conforming 0.0041 mm"));
}

TEST(CompareText, WhatAPlanLacksIsADash) {
  const std::string text = compared({example_check(), conforming_plan(0.0041)});
  EXPECT_THAT(shown_cells(text, "axial gap").back(), "-");
}

TEST(CompareText, WhatConformsAlikeIsCountedNotShown) {
  const std::string text = compared({conforming_plan(0.004), conforming_plan(0.004)});
  EXPECT_THAT(text, Not(HasSubstr("Wheel: bore 44 / Stud: outside 44.035")));
  EXPECT_THAT(text, HasSubstr("1 finding alike and conforming in every plan"));
}

// The wanted clearances are -0.059 to -0.018, 0.041 wide: 0.0041 is 20 % of half of that.
TEST(CompareText, TheVerdictNamesThePlanThatStandsItsLeastMarginAndWhatStandsInTheWay) {
  const std::string text = compared({example_check(), conforming_plan(0.0041)});
  EXPECT_THAT(verdict_line(text),
              HasSubstr("Second plan (wheel-job.toml) has no nonconforming finding and the widest "
                        "least margin, 20 % of its limits (0.0041 mm, radial-1)"));
  EXPECT_THAT(verdict_line(text), HasSubstr("plan 1 would need radial-1 put right"));
}

TEST(CompareText, WhenNoPlanIsFreeOfNonconformingFindingsTheVerdictSaysSo) {
  const std::string text = compared({example_check(), example_check()});
  EXPECT_THAT(verdict_line(text),
              HasSubstr("No plan is free of nonconforming findings; plan 1 would "
                        "need radial-1 put right; plan 2 would need radial-1"));
}

TEST(CompareText, TheLastLineSaysWhatEachPlanCostsAndByWhatOneComesFirst) {
  const std::string text = compared({example_check(), conforming_plan(0.0041)});
  EXPECT_THAT(last_line(text), HasSubstr("plan 1 takes 0 mm3 off irreplaceable parts"));
  EXPECT_THAT(last_line(text),
              HasSubstr("plan 2 comes first as the only one with nothing nonconforming"));
}

TEST(CompareText, OfTwoPlansWithoutFaultsTheLeastMarginDecides) {
  EXPECT_THAT(last_line(compared({conforming_plan(0.004), conforming_plan(0.002)})),
              HasSubstr("plan 1 comes first by its least margin"));
}

TEST(CompareText, WhereEachPlanHasAFaultNothingIsDecided) {
  EXPECT_THAT(last_line(compared({example_check(), example_check()})), HasSubstr("not decided"));
}

}  // namespace spotblue::test::compare_text_test
