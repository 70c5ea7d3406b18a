#pragma once
/// @file
/// A closed loop of lengths and the gap that they leave: worst case, root-sum-square, by lot, warm.
///
/// The gap is the sum of the dimensions that open it less the sum of those that close it.
/// Source: the arithmetic and statistical addition of tolerances of any machine design textbook
/// (e.g. Shigley, "Dimensions and tolerances"); checked by tests/mechanics/stack_test.cpp against
/// the printed examples of tests/reference/stack_examples.csv.

#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"

namespace spotblue {

/// What a longer dimension does to the gap.
enum class StackSense { opens, closes };
constexpr auto describe(const StackSense*) {
  return words("What a longer dimension does to the gap.", "opens", "closes");
}

/// How a dimension is spread over its limits when drawn by lot.
enum class StackSpread {
  uniform,  ///< anywhere within, alike: a part made to limits, nothing known of the shop
  normal,   ///< limits are two standard deviations off: a measured value with k = 2
};
constexpr auto describe(const StackSpread*) {
  return words("How a dimension is spread over its limits.", "uniform", "normal");
}

struct StackDimension {
  std::string name;
  Length nominal;
  Limits limits;
  StackSense sense = StackSense::opens;
  StackSpread spread = StackSpread::uniform;
  double expansion_per_k = 0.0;
  double warmer_by_k = 0.0;
};
constexpr void describe(auto& fields, const StackDimension*) {
  fields.value("StackDimension", "One length of the loop, mm.")
      .member("name", &StackDimension::name, "as errors show it")
      .member("nominal_mm", &StackDimension::nominal,
              "as modelled or measured; need not be in the middle of the limits")
      .member("limits", &StackDimension::limits, "mm, lower no more than upper")
      .member("sense", &StackDimension::sense, "opens or closes the gap")
      .member("spread", &StackDimension::spread, "uniform, or normal with limits at k = 2")
      .member("expansion_per_k", &StackDimension::expansion_per_k, "linear, 1/K, 0 or more")
      .range(kFrom0)
      .member("warmer_by_k", &StackDimension::warmer_by_k, "K, than when the limits hold");
}

/// The gap that the nominal lengths leave; negative: they do not fit.
[[nodiscard]] SPOTBLUE_EXPORT Length nominal_gap(std::span<const StackDimension> loop);

/// Every gap there can be: all dimensions at their worse ends at once.
[[nodiscard]] SPOTBLUE_EXPORT Limits worst_case_gap(std::span<const StackDimension> loop);

/// Gap of the middles plus and minus the root of the sum of the squared half tolerances: what all
/// but a few in a thousand would keep to, were every tolerance three standard deviations wide and
/// centred.
[[nodiscard]] SPOTBLUE_EXPORT Limits root_sum_square_gap(std::span<const StackDimension> loop);

/// The loop at temperature: every length times 1 + expansion x temperature rise.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<StackDimension> warmed(
    std::span<const StackDimension> loop);

/// Index of the dimension with the widest limits, the first of several alike.
/// @throws Error bad_input when the loop is empty.
[[nodiscard]] SPOTBLUE_EXPORT std::size_t widest_dimension(std::span<const StackDimension> loop);

/// @throws Error bad_input naming the dimension whose numbers are not finite, whose limits are
///         reversed or whose expansion is negative.
SPOTBLUE_EXPORT void require_stack(std::span<const StackDimension> loop);

}  // namespace spotblue
