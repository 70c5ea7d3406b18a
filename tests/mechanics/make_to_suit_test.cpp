// Windows worked by hand.
#include "spotblue/mechanics/make_to_suit.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

#include "spotblue/base/error.hpp"
#include "support/thrown.hpp"

namespace spotblue::make_to_suit_test {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

constexpr double kNear = 1e-8;

Limits mm(double lower, double upper) { return {Length::mm(lower), Length::mm(upper)}; }

void expect_limits(Limits got, double lower, double upper) {
  EXPECT_NEAR(got.lower.in_mm(), lower, kNear);
  EXPECT_NEAR(got.upper.in_mm(), upper, kNear);
}

SuitSize size(const std::string& name, double drawn, double uncertainty = 0.0) {
  return {name, Length::mm(drawn), std::nullopt, "", Length::mm(uncertainty)};
}
SuitTerm made(std::size_t index, double factor) { return {SuitOf::to_make, index, factor}; }
SuitTerm known(std::size_t index, double factor) { return {SuitOf::known, index, factor}; }

// A wheel bored 38.012 +- 0.004 takes a bush at H7/s6 (interference 18 to 59 um), whose bore closes
// by three quarters of it and then runs at H8/f7 (20 to 74 um) on a stud of 28.97 +- 0.003.
SuitProblem bush(double close_in = 0.75) {
  SuitProblem problem;
  problem.sizes = {size("outside", 38.05, 0.003), size("bore", 29.05, 0.003)};
  problem.known = {{"wheel", mm(38.008, 38.016)}, {"stud", mm(28.967, 28.973)}};
  problem.demands = {{"press", {known(0, 1), made(0, -1)}, {}, mm(-0.059, -0.018)},
                     {"run",
                      {made(1, 1), made(0, -close_in), known(0, close_in), known(1, -1)},
                      {},
                      mm(0.020, 0.074)}};
  return problem;
}

TEST(MakeToSuit, OneMateThatExistsGivesItsSizeLessTheFit) {
  SuitProblem problem = bush();
  problem.sizes.pop_back();
  problem.demands.pop_back();
  const SuitPlan plan = make_to_suit(problem);
  ASSERT_TRUE(plan.windows[0].has_value());
  // 38.016 + 0.018, 38.008 + 0.059
  expect_limits(plan.windows[0]->hold, 38.034, 38.067);
  expect_limits(plan.windows[0]->accept.value(), 38.037, 38.064);
  EXPECT_NEAR(plan.windows[0]->target.in_mm(), 38.0505, kNear);
  EXPECT_NEAR(plan.windows[0]->share_left, 27.0 / 33.0, 1e-6);
}

TEST(MakeToSuit, AnExactMateGivesTheFitsOwnWidth) {
  SuitProblem problem = bush();
  problem.sizes.pop_back();
  problem.demands.pop_back();
  problem.known[0].limits = mm(38.012, 38.012);
  expect_limits(make_to_suit(problem).windows[0]->hold, 38.030, 38.071);
}

TEST(MakeToSuit, APressedBushSharesItsTwoSizesOut) {
  const SuitPlan plan = make_to_suit(bush());
  ASSERT_TRUE(plan.windows[0] && plan.windows[1]);
  EXPECT_EQ(plan.windows[0]->turn, 1);
  EXPECT_EQ(plan.windows[1]->turn, 2);
  // Running clearance 54 um less 2 x 3 of the stud less 0.75 x 2 x 4 of the wheel is 42 um for bore
  // and three quarters of the outside together: 24 um each.
  EXPECT_NEAR(plan.windows[0]->hold.width().in_mm(), 0.024, kNear);
  EXPECT_NEAR(plan.windows[1]->hold.width().in_mm(), 0.024, kNear);
  EXPECT_NEAR(plan.windows[0]->target.in_mm(), 38.0505, kNear);
  // Bore after pressing in the middle of 28.99 to 29.044, opened by 0.75 x 38.5 um.
  EXPECT_NEAR(plan.windows[1]->target.in_mm(), 29.017 + 0.75 * 0.0385, kNear);
}

TEST(MakeToSuit, MakingTheOutsideFirstFreesTheBore) {
  const SuitPlan plan = make_to_suit(bush());
  // All of the press fit is open to the outside when the bore is made to suit after it.
  expect_limits(plan.windows[0]->first.value(), 38.034, 38.067);
  // 42 um less 0.75 x 2 x 3 um of measuring the outside.
  EXPECT_NEAR(plan.windows[1]->last.width().in_mm(), 0.042 - 0.0045, kNear);
}

TEST(MakeToSuit, AMeasuredSizeNarrowsTheRest) {
  const SuitPlan before = make_to_suit(bush());
  SuitProblem problem = bush();
  problem.sizes.erase(problem.sizes.begin());
  problem.known.push_back({"outside", mm(38.047, 38.053)});
  problem.demands.erase(problem.demands.begin());
  problem.demands[0].terms = {made(0, 1), known(2, -0.75), known(0, 0.75), known(1, -1)};
  const SuitPlan after = make_to_suit(problem);
  // Interference 31 to 45 um: 28.993 + 0.75 x 0.045, 29.041 + 0.75 x 0.031.
  expect_limits(after.windows[0]->hold, 29.02675, 29.06425);
  EXPECT_GE(after.windows[0]->first->lower, before.windows[1]->first->lower);
  EXPECT_LE(after.windows[0]->first->upper, before.windows[1]->first->upper);
}

TEST(MakeToSuit, TwoSizesOfOneClassFitGetTheirClassLimits) {
  SuitProblem problem;
  problem.sizes = {size("hole", 38), size("shaft", 38)};
  // ISO 286-2: 38 H7 = 0/+25, s6 = +43/+59 um.
  problem.sizes[0].own = mm(38.0, 38.025);
  problem.sizes[1].own = mm(38.043, 38.059);
  problem.demands = {{"H7/s6", {made(0, 1), made(1, -1)}, {}, mm(-0.059, -0.018)}};
  const SuitPlan plan = make_to_suit(problem);
  expect_limits(plan.windows[0]->hold, 38.0, 38.025);
  expect_limits(plan.windows[1]->hold, 38.043, 38.059);
}

TEST(MakeToSuit, TwoSizesWithoutLimitsOfTheirOwnShareTheFitEvenly) {
  SuitProblem problem;
  problem.sizes = {size("hole", 20), size("shaft", 20)};
  problem.demands = {{"run", {made(0, 1), made(1, -1)}, {}, mm(0.02, 0.06)}};
  const SuitPlan plan = make_to_suit(problem);
  expect_limits(plan.windows[0]->hold, 19.99, 20.01);
  expect_limits(plan.windows[1]->hold, 19.95, 19.97);
  EXPECT_FALSE(plan.windows[0]->first.has_value());
}

TEST(MakeToSuit, ContradictingDemandsAreNamedAsAPair) {
  SuitProblem problem;
  problem.sizes = {size("pin", 10)};
  problem.known = {{"left", mm(10.0, 10.0)}, {"right", mm(10.03, 10.03)}};
  problem.demands = {{"slides in the left", {known(0, 1), made(0, -1)}, {}, mm(0.005, 0.015)},
                     {"pressed in the right", {known(1, 1), made(0, -1)}, {}, mm(-0.02, -0.01)}};
  const SuitPlan plan = make_to_suit(problem);
  // At most 9.995 for the left, at least 10.04 for the right.
  ASSERT_EQ(plan.conflicts.size(), 1U);
  EXPECT_EQ(plan.conflicts[0].first, "pressed in the right");
  EXPECT_EQ(plan.conflicts[0].second, "slides in the left");
  EXPECT_THAT(plan.conflicts[0].through, IsEmpty());
  EXPECT_NEAR(plan.conflicts[0].short_by.in_mm(), 0.045, kNear);
  EXPECT_FALSE(plan.windows[0].has_value());
}

TEST(MakeToSuit, AConflictThroughAThirdDemandNamesAllThree) {
  SuitProblem problem = bush();
  problem.sizes[1].own = mm(29.0, 29.01);
  problem.sizes[1].own_by = "own limits";
  const SuitPlan plan = make_to_suit(problem);
  ASSERT_EQ(plan.conflicts.size(), 1U);
  // A bore of 29.01 at most lets the outside be 38.008 + (29.01 - 28.993)/0.75 at most; it must be
  // 38.034 at least.
  EXPECT_EQ(plan.conflicts[0].size, 0U);
  EXPECT_EQ(plan.conflicts[0].first, "press");
  EXPECT_EQ(plan.conflicts[0].second, "run");
  EXPECT_THAT(plan.conflicts[0].through, ElementsAre("own limits"));
  EXPECT_NEAR(plan.conflicts[0].short_by.in_mm(), 0.026 - 0.017 / 0.75, kNear);
}

TEST(MakeToSuit, AMateKnownTooLooselyConflictsAlone) {
  SuitProblem problem;
  problem.sizes = {size("shaft", 20)};
  problem.known = {{"hole", mm(19.97, 20.03)}};
  problem.demands = {{"run", {known(0, 1), made(0, -1)}, {}, mm(0.02, 0.05)}};
  const SuitPlan plan = make_to_suit(problem);
  ASSERT_EQ(plan.conflicts.size(), 1U);
  EXPECT_EQ(plan.conflicts[0].first, "run");
  EXPECT_EQ(plan.conflicts[0].second, "");
  EXPECT_NEAR(plan.conflicts[0].short_by.in_mm(), 0.03, kNear);
}

TEST(MakeToSuit, AConflictOfDemandsRoundARingIsNamed) {
  // By hand: each of three is 0.05 larger than the next, and the last 0.02 smaller than the first
  // at most: 0.05 + 0.05 - 0.02 too much. Limits of 10 mm of its own stop none of them.
  SuitProblem problem;
  problem.sizes = {size("a", 20), size("b", 20), size("c", 20)};
  for (SuitSize& one : problem.sizes) {
    one.own = mm(15, 25);
  }
  problem.demands = {{"a over b", {made(0, 1), made(1, -1)}, {}, mm(0.05, 0.2)},
                     {"b over c", {made(1, 1), made(2, -1)}, {}, mm(0.05, 0.2)},
                     {"c under a", {made(0, 1), made(2, -1)}, {}, mm(0.0, 0.02)}};
  const SuitPlan plan = make_to_suit(problem);
  ASSERT_EQ(plan.conflicts.size(), 1U);
  const SuitConflict& found = plan.conflicts[0];
  std::vector<std::string> names = found.through;
  names.insert(names.end(), {found.first, found.second});
  EXPECT_THAT(names, ::testing::UnorderedElementsAre("a over b", "b over c", "c under a"));
  EXPECT_NEAR(found.short_by.in_mm(), 0.08, kNear);
}

TEST(MakeToSuit, AConflictLeavesOtherPartsAlone) {
  SuitProblem problem = bush();
  problem.sizes.push_back(size("pin", 10));
  problem.sizes.back().own = mm(10.0, 10.01);
  problem.sizes.back().own_by = "pin";
  problem.known.push_back({"hole", mm(9.0, 9.0)});
  problem.demands.push_back({"pin run", {known(2, 1), made(2, -1)}, {}, mm(0.0, 0.02)});
  const SuitPlan plan = make_to_suit(problem);
  EXPECT_EQ(plan.conflicts.size(), 1U);
  EXPECT_TRUE(plan.windows[0] && plan.windows[1]);
  EXPECT_FALSE(plan.windows[2].has_value());
}

TEST(MakeToSuit, AnUncertaintyAsWideAsTheWindowLeavesNothingToAccept) {
  SuitProblem problem;
  problem.sizes = {size("shaft", 20, 0.02)};
  problem.known = {{"hole", mm(20.0, 20.0)}};
  problem.demands = {{"run", {known(0, 1), made(0, -1)}, {}, mm(0.01, 0.04)}};
  const SuitPlan plan = make_to_suit(problem);
  expect_limits(plan.windows[0]->hold, 19.96, 19.99);
  EXPECT_FALSE(plan.windows[0]->accept.has_value());
  EXPECT_EQ(plan.windows[0]->share_left, 0.0);
}

TEST(MakeToSuit, AFactorOfNothingIsRefusedByItsPlaceAndTheDemandsName) {
  SuitProblem problem = bush(0.0);
  const Error problem_found = test::error_of([&] { const SuitPlan plan = make_to_suit(problem); });
  EXPECT_THAT(problem_found.place(),
              ::testing::MatchesRegex(R"(problem\.demands\[.\]\.terms\[.\]\.factor)"));
  EXPECT_THAT(problem_found.rule(), ::testing::StartsWith("run needs a factor"));
}

}  // namespace spotblue::make_to_suit_test
