#include "spotblue/mechanics/stack.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "spotblue/base/error.hpp"
#include "spotblue/mechanics/stack_draw.hpp"
#include "support/thrown.hpp"

namespace spotblue::stack_test {

StackDimension about(double nominal, double half, StackSense sense = StackSense::opens,
                     StackSpread spread = StackSpread::uniform) {
  return {"length",
          Length::mm(nominal),
          {Length::mm(nominal - half), Length::mm(nominal + half)},
          sense,
          spread};
}

// 42.8 - 2.5 - 40, of unlike tolerances.
std::vector<StackDimension> end_play() {
  return {about(42.8, 0.06), about(2.5, 0.1, StackSense::closes),
          about(40.0, 0.03, StackSense::closes)};
}

constexpr Limits kWanted{Length::mm(0.2), Length::mm(0.4)};

// Share of sums of independent uniform(-half, half) that lie at or under x, exactly: the
// alternating sum over the corners of the box (the volume a half space cuts off it).
double exact_share(const std::vector<double>& halves, double x) {
  const std::size_t n = halves.size();
  double total = 0.0;
  double scale = 1.0;
  for (std::size_t i = 0; i < n; ++i) {
    scale *= 2.0 * halves[i] * static_cast<double>(i + 1);
  }
  for (std::size_t corner = 0; corner < (std::size_t{1} << n); ++corner) {
    double reach = x;
    double sign = 1.0;
    for (std::size_t i = 0; i < n; ++i) {
      const bool low = ((corner >> i) & 1U) != 0U;
      reach += low ? -halves[i] : halves[i];
      sign = low ? -sign : sign;
    }
    total += sign * std::pow(std::max(reach, 0.0), static_cast<double>(n));
  }
  return total / scale;
}

TEST(ExactShare, IsTheKnownOneForTwoAlike) {
  // The sum of two alike is a triangle: at half its reach 7/8 lie under it.
  EXPECT_NEAR(exact_share({1.0, 1.0}, 1.0), 0.875, 1e-12);
  EXPECT_NEAR(exact_share({0.3, 0.5, 0.2}, 1.0), 1.0, 1e-12);
}

TEST(Stack, TheGapIsWhatOpensLessWhatCloses) {
  EXPECT_NEAR(nominal_gap(end_play()).in_mm(), 0.3, 1e-12);
  EXPECT_NEAR(worst_case_gap(end_play()).lower.in_mm(), 0.11, 1e-12);
  EXPECT_NEAR(worst_case_gap(end_play()).upper.in_mm(), 0.49, 1e-12);
}

// 0.06, 0.1, 0.03: root of 0.0145.
TEST(Stack, RootSumSquareLiesAboutTheMiddle) {
  const Limits gap = root_sum_square_gap(end_play());
  EXPECT_NEAR(gap.lower.in_mm(), 0.3 - std::sqrt(0.0145), 1e-12);
  EXPECT_NEAR(gap.upper.in_mm(), 0.3 + std::sqrt(0.0145), 1e-12);
}

TEST(Stack, OneSidedLimitsMoveTheMiddleNotTheNominal) {
  std::vector<StackDimension> loop = end_play();
  loop[0].limits = {Length::mm(42.8), Length::mm(42.92)};
  EXPECT_NEAR(nominal_gap(loop).in_mm(), 0.3, 1e-12);
  const Limits gap = root_sum_square_gap(loop);
  EXPECT_NEAR(0.5 * (gap.lower + gap.upper).in_mm(), 0.36, 1e-12);
}

TEST(Stack, WorstCaseHoldsAllOfRootSumSquare) {
  std::vector<StackDimension> loop;
  for (const double half : {0.0, 0.02, 0.3, 0.001, 0.1}) {
    loop.push_back(
        about(10.0, half, loop.size() % 2 == 0 ? StackSense::opens : StackSense::closes));
    EXPECT_LE(worst_case_gap(loop).lower, root_sum_square_gap(loop).lower + Length::mm(1e-12));
    EXPECT_GE(worst_case_gap(loop).upper, root_sum_square_gap(loop).upper - Length::mm(1e-12));
  }
}

// Bronze 18e-6 against steel 11.7e-6 over 40 mm and 60 K: 40 x 60 x 6.3e-6 = 0.01512 less.
TEST(Stack, AWarmSleeveTakesUpPlay) {
  std::vector<StackDimension> loop = {about(40.3, 0.0), about(40.0, 0.0, StackSense::closes)};
  loop[0].expansion_per_k = 11.7e-6;
  loop[1].expansion_per_k = 18.0e-6;
  loop[0].warmer_by_k = loop[1].warmer_by_k = 60.0;
  const double expected = 0.3 + 40.3 * 11.7e-6 * 60.0 - 40.0 * 18.0e-6 * 60.0;
  EXPECT_NEAR(worst_case_gap(warmed(loop)).lower.in_mm(), expected, 1e-12);
  EXPECT_NEAR(nominal_gap(warmed(loop)).in_mm(), expected, 1e-12);
}

TEST(Stack, TheWidestDimensionIsFound) { EXPECT_EQ(widest_dimension(end_play()), 1U); }

// Shares at seven gaps within four standard errors of the exact convolution.
TEST(StackDraw, TendsToTheExactConvolution) {
  const std::vector<double> halves{0.06, 0.1, 0.03};
  const StackDraw draw{400'000, 7, 2};
  for (const double gap : {0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.45}) {
    const StackOutcome drawn = draw_gaps(end_play(), {Length::mm(gap), Length::mm(1.0)}, draw);
    const double exact = exact_share(halves, gap - 0.3);
    const double error = std::sqrt(exact * (1.0 - exact) / static_cast<double>(draw.samples));
    EXPECT_NEAR(drawn.share_below, exact, 4.0 * error) << gap;
  }
}

TEST(StackDraw, MoreSamplesComeNearerToTheExactQuantile) {
  const std::vector<double> halves{0.06, 0.1, 0.03};
  const StackOutcome drawn = draw_gaps(end_play(), kWanted, {1'000'000, 3, 0});
  EXPECT_NEAR(exact_share(halves, drawn.low.in_mm() - 0.3), 0.00135, 0.0002);
  EXPECT_NEAR(exact_share(halves, drawn.middle.in_mm() - 0.3), 0.5, 0.002);
  EXPECT_NEAR(exact_share(halves, drawn.high.in_mm() - 0.3), 0.99865, 0.0002);
}

// Uniform: half / root 3; normal: limits are two standard deviations off.
TEST(StackDraw, DeviationIsThatOfTheSpread) {
  const std::vector<StackDimension> loop = {
      about(10.0, 0.3), about(5.0, 0.2, StackSense::closes, StackSpread::normal)};
  const StackOutcome drawn = draw_gaps(loop, kWanted, {200'000, 11, 0});
  EXPECT_NEAR(drawn.mean.in_mm(), 5.0, 0.002);
  EXPECT_NEAR(drawn.deviation.in_mm(), std::sqrt(0.03 + 0.01), 0.001);
}

TEST(StackDraw, UniformGapsStayWithinTheWorstCase) {
  const StackOutcome drawn = draw_gaps(end_play(), kWanted, {50'000, 5, 0});
  EXPECT_GE(drawn.least, worst_case_gap(end_play()).lower);
  EXPECT_LE(drawn.greatest, worst_case_gap(end_play()).upper);
}

std::array<double, 9> bits(const StackOutcome& drawn) {
  return {drawn.mean.in_mm(), drawn.deviation.in_mm(), drawn.least.in_mm(),
          drawn.low.in_mm(),  drawn.middle.in_mm(),    drawn.high.in_mm(),
          drawn.share_below,  drawn.share_above,       drawn.greatest.in_mm()};
}

class StackThreads : public testing::TestWithParam<unsigned> {};

TEST_P(StackThreads, GiveTheSameBitsAsOne) {
  std::vector<StackDimension> loop = end_play();
  loop.push_back(about(1.0, 0.01, StackSense::opens, StackSpread::normal));
  // Not a whole number of blocks.
  const auto one = bits(draw_gaps(loop, kWanted, {60'001, 42, 1}));
  EXPECT_EQ(bits(draw_gaps(loop, kWanted, {60'001, 42, GetParam()})), one);
}

INSTANTIATE_TEST_SUITE_P(Counts, StackThreads, testing::Values(2U, 3U, 8U, 0U));

TEST(StackDraw, AnotherSeedGivesOtherGaps) {
  EXPECT_NE(bits(draw_gaps(end_play(), kWanted, {10'000, 1, 1})),
            bits(draw_gaps(end_play(), kWanted, {10'000, 2, 1})));
}

TEST(StackDraw, AnswerDoesNotDependOnTheUnitItWasWrittenIn) {
  std::vector<StackDimension> inches = end_play();
  for (StackDimension& dimension : inches) {
    dimension.nominal = Length::inch(dimension.nominal.in_inch());
    dimension.limits = {Length::inch(dimension.limits.lower.in_inch()),
                        Length::inch(dimension.limits.upper.in_inch())};
  }
  const StackOutcome metric = draw_gaps(end_play(), kWanted, {20'000, 9, 1});
  const StackOutcome inch = draw_gaps(inches, kWanted, {20'000, 9, 1});
  EXPECT_NEAR(metric.high.in_mm(), inch.high.in_mm(), 1e-12);
  EXPECT_NEAR(worst_case_gap(end_play()).lower.in_mm(), worst_case_gap(inches).lower.in_mm(),
              1e-12);
}

TEST(Stack, ReversedLimitsAreRefusedByTheirPlace) {
  std::vector<StackDimension> loop = end_play();
  std::swap(loop[1].limits.lower, loop[1].limits.upper);
  const Error error = test::error_of([&] { return require_stack(loop); });
  EXPECT_EQ(error.place(), "loop[1].limits");
}

TEST(Stack, NumbersThatAreNoneAndEmptyLoopsAreRefused) {
  std::vector<StackDimension> loop = end_play();
  loop[0].nominal = Length::mm(std::numeric_limits<double>::infinity());
  EXPECT_THROW(require_stack(loop), Error);
  EXPECT_THROW((void)widest_dimension({}), Error);
  EXPECT_THROW((void)draw_gaps(end_play(), kWanted, {0, 1, 1}), Error);
}

}  // namespace spotblue::stack_test
