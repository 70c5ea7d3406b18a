#pragma once
/// @file
/// The gaps of many loops of dimensions drawn by lot.

#include <cstddef>
#include <cstdint>
#include <span>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/mechanics/stack.hpp"

namespace spotblue {

struct StackDraw {
  std::size_t samples = 100'000;
  std::uint64_t seed = 1;
  unsigned threads = 0;
};
constexpr void describe(auto& fields, const StackDraw*) {
  fields.value("StackDraw", "How many loops are drawn, and by which lot.")
      .member("samples", &StackDraw::samples, "1 to 100 million")
      .range({1.0, 1e8})
      .member("seed", &StackDraw::seed, "one seed gives one answer")
      .member("threads", &StackDraw::threads,
              "0: as many as the machine has; changes no digit of the answer");
}

struct StackOutcome {
  Length mean, deviation;
  Length least, greatest;
  Length low, middle, high;
  double share_below = 0.0;
  double share_above = 0.0;
};
constexpr void describe(auto& fields, const StackOutcome*) {
  fields.value("StackOutcome", "The gaps of many loops drawn by lot, mm.")
      .member("mean_mm", &StackOutcome::mean, "over the samples")
      .member("deviation_mm", &StackOutcome::deviation, "standard deviation over the samples")
      .member("least_mm", &StackOutcome::least, "drawn, mm")
      .member("greatest_mm", &StackOutcome::greatest, "drawn, mm")
      .member("low_mm", &StackOutcome::low, "0.135 % of the samples are not over it")
      .member("middle_mm", &StackOutcome::middle, "50 % of the samples are not over it")
      .member("high_mm", &StackOutcome::high, "99.865 % of the samples are not over it")
      .member("share_below", &StackOutcome::share_below,
              "of the samples under wanted.lower, 0 to 1")
      .member("share_above", &StackOutcome::share_above, "over the wanted upper limit, 0 to 1");
}

/// Draws whole loops and takes the gap of each.
///
/// Samples come in blocks of 4096, each with a generator of its own seeded by (seed, block), and
/// are added up in the order of the blocks: one seed gives one answer on any number of threads.
/// @throws Error bad_input for no samples or too many, wanted limits that are reversed or not
///         finite, and what require_stack refuses.
[[nodiscard]] SPOTBLUE_EXPORT StackOutcome draw_gaps(std::span<const StackDimension> loop,
                                                     Limits wanted, const StackDraw& draw);

}  // namespace spotblue
