#include "spotblue/base/outcome.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

void check(Limits limits, const char* name) {
  if (!std::isfinite(limits.lower.in_mm()) || !std::isfinite(limits.upper.in_mm()) ||
      limits.lower > limits.upper) {
    throw Error(ErrorCode::bad_input, {"", name}, "limits must be finite with lower <= upper",
                "swap or correct the two limits");
  }
}

// What binary numbers lose of decimals that were added or taken from each other, mm: each of the
// few that make an end is off by up to half an epsilon of it, and so is each sum.
Length lost_in_binary(Limits possible, Limits limits) {
  constexpr double kParts = 4.0 * std::numeric_limits<double>::epsilon();
  return Length::mm(kParts *
                    std::max({std::abs(possible.lower.in_mm()), std::abs(possible.upper.in_mm()),
                              std::abs(limits.lower.in_mm()), std::abs(limits.upper.in_mm())}));
}

}  // namespace

std::string_view outcome_name(Outcome outcome) { return word_of(outcome); }

Outcome judge(Length value, Length uncertainty, Limits limits) {
  if (!std::isfinite(value.in_mm()) || !(uncertainty.in_mm() >= 0.0) ||
      !std::isfinite(uncertainty.in_mm())) {
    throw Error(ErrorCode::bad_input, {"", "value, uncertainty"},
                "need a finite value and an uncertainty of 0 or more",
                "correct the measured value");
  }
  return judge(Limits{value - uncertainty, value + uncertainty}, limits);
}

Outcome judge(Limits possible, Limits limits) {
  check(possible, "possible");
  check(limits, "limits");
  const Length lost = lost_in_binary(possible, limits);
  if (possible.lower >= limits.lower - lost && possible.upper <= limits.upper + lost) {
    return Outcome::conforming;
  }
  if (possible.upper < limits.lower - lost || possible.lower > limits.upper + lost) {
    return Outcome::nonconforming;
  }
  return Outcome::undecided;
}

Length margin(Limits possible, Limits limits) {
  check(possible, "possible");
  check(limits, "limits");
  return std::min(possible.lower - limits.lower, limits.upper - possible.upper);
}

}  // namespace spotblue
