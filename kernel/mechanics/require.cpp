#include "mechanics/require.hpp"

#include <fmt/format.h>

#include <cmath>

#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

[[noreturn]] void refuse(double value, const std::string& argument, std::string_view unit,
                         std::string_view rule) {
  throw Error(ErrorCode::bad_input, {"", argument},
              fmt::format("need {}, got {} {}", rule, value, unit),
              "check the number and its unit");
}

}  // namespace

void require_positive(double value, const std::string& argument, std::string_view unit) {
  if (!std::isfinite(value) || value <= 0.0) {
    refuse(value, argument, unit, "a number greater than 0");
  }
}

void require_not_negative(double value, const std::string& argument, std::string_view unit) {
  if (!std::isfinite(value) || value < 0.0) {
    refuse(value, argument, unit, "0 or more");
  }
}

void require_finite(double value, const std::string& argument, std::string_view unit) {
  if (!std::isfinite(value)) {
    refuse(value, argument, unit, "a finite number");
  }
}

}  // namespace spotblue
