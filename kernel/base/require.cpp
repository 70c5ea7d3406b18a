#include "base/require.hpp"

#include <fmt/format.h>

#include <cmath>

#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

[[noreturn]] void refuse(double value, const std::string& argument, std::string_view unit,
                         std::string_view rule) {
  throw Error(ErrorCode::bad_input, {"", argument},
              fmt::format("need {}, got {}{}{}", rule, value, unit.empty() ? "" : " ", unit),
              "check the number and its unit");
}

bool is_number(double value) { return std::abs(value) <= kGreatestNumber; }

std::string rule_of(const NumberRange& range) {
  const bool any_size = range.greatest >= kGreatestNumber;
  if (any_size && range.least <= -kGreatestNumber) {
    return fmt::format("a finite number of at most {:g}", kGreatestNumber);
  }
  const std::string least =
      fmt::format("{} {}", range.least_too ? "at least" : "more than", range.least);
  return any_size ? least : fmt::format("{} and at most {}", least, range.greatest);
}

}  // namespace

std::string ArgumentPlace::text() const {
  std::string text = in == nullptr ? "" : in->text() + ".";
  text += name;
  return index ? fmt::format("{}[{}]", text, *index) : text;
}

void require_in_range(double value, const NumberRange& range, const ArgumentPlace& place) {
  const bool over = range.least_too ? value >= range.least : value > range.least;
  const bool too_small = !range.least_too && range.least == 0.0 && value < kLeastNumber;
  if (!is_number(value) || !over || too_small || !(value <= range.greatest)) {
    refuse(value, place.text(), "", rule_of(range));
  }
}

void require_positive(double value, const std::string& argument, std::string_view unit) {
  if (!is_number(value) || value < kLeastNumber) {
    refuse(value, argument, unit, "a number greater than 0");
  }
}

void require_not_negative(double value, const std::string& argument, std::string_view unit) {
  if (!is_number(value) || value < 0.0) {
    refuse(value, argument, unit, "0 or more");
  }
}

void require_finite(double value, const std::string& argument, std::string_view unit) {
  if (!is_number(value)) {
    refuse(value, argument, unit, "a finite number");
  }
}

void require_temperature(double value_c, const std::string& argument) {
  require_in_range(value_c, kTemperature_c, {nullptr, argument});
}

void require_limits(const Limits& limits, const std::string& argument) {
  require_finite(limits.lower.in_mm(), argument + ".lower_mm", "mm");
  require_finite(limits.upper.in_mm(), argument + ".upper_mm", "mm");
  if (limits.lower > limits.upper) {
    throw Error(ErrorCode::bad_input, {"", argument},
                fmt::format("need lower <= upper, got {} to {} mm", limits.lower.in_mm(),
                            limits.upper.in_mm()),
                "swap the two limits");
  }
}

}  // namespace spotblue
