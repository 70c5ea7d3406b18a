#include "spotblue/mechanics/stack.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "base/require.hpp"
#include "mechanics/require.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

double sign_of(StackSense sense) { return sense == StackSense::opens ? 1.0 : -1.0; }

Length middle(const StackDimension& dimension) {
  return 0.5 * (dimension.limits.lower + dimension.limits.upper);
}

}  // namespace

void require_dimensions(std::span<const StackDimension> lengths, std::string_view argument) {
  for (std::size_t i = 0; i < lengths.size(); ++i) {
    const std::string place = fmt::format("{}[{}]", argument, i);
    const StackDimension& length = lengths[i];
    require_value(length, place);
    if (!(length.expansion_per_k * length.warmer_by_k > -1.0)) {
      throw Error(ErrorCode::bad_input, {{}, place + ".warmer_by_k"},
                  fmt::format("{} K leave nothing of {} at {} per K", length.warmer_by_k,
                              length.name, length.expansion_per_k),
                  "check the temperature rise and the expansion");
    }
  }
}

void require_stack(std::span<const StackDimension> loop) {
  if (loop.empty()) {
    throw Error(ErrorCode::bad_input, {{}, "loop"},
                "a stack needs at least one dimension, got none", "list the lengths of the loop");
  }
  require_dimensions(loop, "loop");
}

Length nominal_gap(std::span<const StackDimension> loop) {
  require_stack(loop);
  Length gap;
  for (const StackDimension& dimension : loop) {
    gap = gap + sign_of(dimension.sense) * dimension.nominal;
  }
  return gap;
}

Limits worst_case_gap(std::span<const StackDimension> loop) {
  require_stack(loop);
  Limits gap;
  for (const StackDimension& dimension : loop) {
    const auto [lower, upper] = dimension.limits;
    const bool opens = dimension.sense == StackSense::opens;
    gap.lower = opens ? gap.lower + lower : gap.lower - upper;
    gap.upper = opens ? gap.upper + upper : gap.upper - lower;
  }
  return gap;
}

Limits root_sum_square_gap(std::span<const StackDimension> loop) {
  require_stack(loop);
  Length centre;
  double squares = 0.0;
  for (const StackDimension& dimension : loop) {
    const double half = 0.5 * dimension.limits.width().in_mm();
    centre = centre + sign_of(dimension.sense) * middle(dimension);
    squares += half * half;
  }
  const Length half = Length::mm(std::sqrt(squares));
  return {centre - half, centre + half};
}

std::vector<StackDimension> warmed(std::span<const StackDimension> loop) {
  require_stack(loop);
  std::vector<StackDimension> warm(loop.begin(), loop.end());
  for (StackDimension& dimension : warm) {
    const double longer = 1.0 + dimension.expansion_per_k * dimension.warmer_by_k;
    dimension.nominal = longer * dimension.nominal;
    dimension.limits = {longer * dimension.limits.lower, longer * dimension.limits.upper};
    dimension.warmer_by_k = 0.0;
  }
  return warm;
}

std::size_t widest_dimension(std::span<const StackDimension> loop) {
  require_stack(loop);
  const auto widest = std::max_element(loop.begin(), loop.end(), [](const auto& a, const auto& b) {
    return a.limits.width() < b.limits.width();
  });
  return static_cast<std::size_t>(widest - loop.begin());
}

}  // namespace spotblue
