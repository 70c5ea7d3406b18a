#include "spotblue/mechanics/stack_draw.hpp"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <thread>
#include <utility>

#include "base/require.hpp"
#include "mechanics/gap_draw.hpp"
#include "spotblue/mechanics/stack.hpp"

namespace spotblue {
namespace {

constexpr std::size_t kBlock = 4096;
// Three standard deviations of a normal distribution.
constexpr double kLow = 0.00135;
constexpr double kHigh = 0.99865;

std::mt19937_64 generator(std::uint64_t seed, std::size_t block) {
  const auto number = static_cast<std::uint64_t>(block);
  std::seed_seq words{static_cast<std::uint32_t>(seed), static_cast<std::uint32_t>(seed >> 32U),
                      static_cast<std::uint32_t>(number),
                      static_cast<std::uint32_t>(number >> 32U)};
  return std::mt19937_64(words);
}

// Sum over all, added up block by block: the same on any number of threads.
template <typename Term>
double sum(std::span<const double> gaps, const Term& term) {
  double total = 0.0;
  for (std::size_t from = 0; from < gaps.size(); from += kBlock) {
    double block = 0.0;
    for (const double gap : gaps.subspan(from, std::min(kBlock, gaps.size() - from))) {
      block += term(gap);
    }
    total += block;
  }
  return total;
}

// The least drawn gap that this share of all does not exceed; the order of `gaps` is lost.
Length quantile(std::vector<double>& gaps, double share) {
  const double rank = std::ceil(share * static_cast<double>(gaps.size()));
  const auto at = gaps.begin() + static_cast<std::ptrdiff_t>(std::max(rank, 1.0)) - 1;
  std::nth_element(gaps.begin(), at, gaps.end());
  return Length::mm(*at);
}

}  // namespace

LengthDraw::LengthDraw(std::uint64_t seed, std::size_t block) : random_(generator(seed, block)) {}

double LengthDraw::off_middle(const StackDimension& dimension) {
  const double half = 0.5 * dimension.limits.width().in_mm();
  if (dimension.spread == StackSpread::normal) {
    return 0.5 * half * normal_(random_);
  }
  // The upper 53 bits make a number from 0 up to 1, whatever the library.
  const double share = static_cast<double>(random_() >> 11U) * 0x1.0p-53;
  return half * (2.0 * share - 1.0);
}

std::vector<double> draw_blocks(const StackDraw& draw, const DrawBlock& block) {
  require_value(draw, "draw");
  std::vector<double> gaps(draw.samples);
  const std::size_t blocks = (draw.samples + kBlock - 1) / kBlock;
  std::atomic<std::size_t> next{0};
  const auto work = [&] {
    for (std::size_t number = next++; number < blocks; number = next++) {
      const std::size_t from = number * kBlock;
      const std::size_t count = std::min(kBlock, draw.samples - from);
      LengthDraw lengths(draw.seed, number);
      block(lengths, std::span(gaps).subspan(from, count));
    }
  };
  const unsigned asked = draw.threads > 0 ? draw.threads : std::thread::hardware_concurrency();
  const std::size_t helpers = std::min<std::size_t>(std::max(asked, 1U), blocks) - 1;
  std::vector<std::jthread> threads;
  threads.reserve(helpers);
  for (std::size_t i = 0; i < helpers; ++i) {
    threads.emplace_back(work);
  }
  work();
  threads.clear();  // waits for them
  return gaps;
}

StackOutcome outcome_of(std::vector<double> gaps, Limits wanted) {
  const auto count = static_cast<double>(gaps.size());
  const double mean = sum(gaps, [](double gap) { return gap; }) / count;
  const double variance =
      sum(gaps, [mean](double gap) { return (gap - mean) * (gap - mean); }) / count;
  const double lower = wanted.lower.in_mm();
  const double upper = wanted.upper.in_mm();
  const auto [least, greatest] = std::minmax_element(gaps.begin(), gaps.end());
  StackOutcome outcome;
  outcome.mean = Length::mm(mean);
  outcome.deviation = Length::mm(std::sqrt(variance));
  outcome.least = Length::mm(*least);
  outcome.greatest = Length::mm(*greatest);
  outcome.share_below = sum(gaps, [lower](double gap) { return gap < lower ? 1.0 : 0.0; }) / count;
  outcome.share_above = sum(gaps, [upper](double gap) { return gap > upper ? 1.0 : 0.0; }) / count;
  outcome.low = quantile(gaps, kLow);
  outcome.middle = quantile(gaps, 0.5);
  outcome.high = quantile(gaps, kHigh);
  return outcome;
}

StackOutcome draw_gaps(std::span<const StackDimension> loop, Limits wanted, const StackDraw& draw) {
  require_stack(loop);
  require_limits(wanted, "wanted");
  std::vector<double> gaps = draw_blocks(draw, [&loop](LengthDraw& lot, std::span<double> into) {
    for (double& gap : into) {
      gap = 0.0;
      for (const StackDimension& dimension : loop) {
        const double middle = 0.5 * (dimension.limits.lower + dimension.limits.upper).in_mm();
        gap +=
            (dimension.sense == StackSense::opens ? middle : -middle) + lot.off_middle(dimension);
      }
    }
  });
  return outcome_of(std::move(gaps), wanted);
}

}  // namespace spotblue
