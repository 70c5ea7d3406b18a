#include "check/words/words.hpp"

#include <fmt/format.h>

#include <utility>

#include "spotblue/base/angle.hpp"

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

std::string from_line(std::optional<int> line) {
  return line ? fmt::format(" (job file, line {})", *line) : std::string();
}

void add_range(std::vector<Quantity>& quantities, const std::string& key, Limits range) {
  quantities.push_back(millimetres(key + "_min_mm", range.lower));
  quantities.push_back(millimetres(key + "_max_mm", range.upper));
}

Quantity millimetres(std::string key, Length length) { return {std::move(key), length.in_mm()}; }

Quantity degrees(std::string key, double radians) { return {std::move(key), degrees(radians)}; }

}  // namespace spotblue
