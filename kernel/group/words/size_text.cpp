#include "group/words/size_text.hpp"

#include <fmt/format.h>

namespace spotblue {
namespace {

// A micrometre, and in inches the nearest power of ten below it.
int decimals(LengthUnit unit) { return unit == LengthUnit::mm ? 3 : 5; }

}  // namespace

std::string length_text(Length length, LengthUnit unit) {
  return fmt::format("{} {}", format_length(length, unit, decimals(unit)), unit_name(unit));
}

std::string range_text(Limits range, LengthUnit unit) {
  return fmt::format("{} to {} {}", format_length(range.lower, unit, decimals(unit)),
                     format_length(range.upper, unit, decimals(unit)), unit_name(unit));
}

}  // namespace spotblue
