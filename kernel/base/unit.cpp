#include "spotblue/base/unit.hpp"

#include <fmt/format.h>

#include <charconv>
#include <cmath>
#include <optional>

#include "spotblue/base/ascii.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

constexpr double kMmPerInch = 25.4;  // ISO 80000-3: exactly 25.4 mm

std::optional<double> decimal(std::string_view text) {
  text = trimmed(text);
  double value = 0.0;
  const auto [end, status] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (text.empty() || status != std::errc() || end != text.data() + text.size() ||
      !std::isfinite(value)) {
    return std::nullopt;
  }
  return value;
}

std::optional<double> fraction(std::string_view text) {
  const auto slash = text.find('/');
  if (slash == std::string_view::npos) {
    return decimal(text);
  }
  const auto top = decimal(text.substr(0, slash));
  const auto bottom = decimal(text.substr(slash + 1));
  if (!top || !bottom || *top < 0.0 || *bottom <= 0.0) {
    return std::nullopt;
  }
  return *top / *bottom;
}

// "1 5/16" and "1-5/16": the whole number, then a fraction.
std::optional<double> mixed_number(std::string_view text) {
  text = trimmed(text);
  const bool negative = !text.empty() && text.front() == '-';
  if (negative) {
    text.remove_prefix(1);
  }
  std::optional<double> value;
  const auto gap = text.find_first_of(" -");
  if (text.find('/') != std::string_view::npos && gap != std::string_view::npos) {
    const auto whole = decimal(text.substr(0, gap));
    const auto part = fraction(text.substr(gap + 1));
    if (whole && part && *whole >= 0.0) {
      value = *whole + *part;
    }
  } else if (text.empty() || text.front() != '-') {
    value = fraction(text);
  }
  return value && negative ? -*value : value;
}

// A comma is asked back, not taken: "1,250" is a thousand to one reader and a bit over one to
// another.
std::string cure_of_length(std::string_view text) {
  if (text.find(',') != std::string_view::npos) {
    return "write decimals with a point, 25.4, and no comma between thousands";
  }
  return "write it like 44, 33.34, 5/16, 1 5/16 or 12 mm";
}

}  // namespace

Length parse_length(std::string_view text, LengthUnit unit) {
  std::string_view rest = trimmed(text);
  LengthUnit used = unit;
  const auto strip = [&rest, &used](std::string_view ending, LengthUnit meaning) {
    if (rest.size() > ending.size() && rest.ends_with(ending)) {
      rest = trimmed(rest.substr(0, rest.size() - ending.size()));
      used = meaning;
      return true;
    }
    return false;
  };
  if (!strip("mm", LengthUnit::mm) && !strip("inch", LengthUnit::inch) &&
      !strip("in", LengthUnit::inch)) {
    strip("\"", LengthUnit::inch);
  }
  const auto value = mixed_number(rest);
  const double mm = value.value_or(0.0) * (used == LengthUnit::inch ? kMmPerInch : 1.0);
  if (!value || !std::isfinite(mm)) {
    throw Error(ErrorCode::bad_input, {}, fmt::format("\"{}\" is not a length", text),
                cure_of_length(text));
  }
  return used == LengthUnit::mm ? Length::mm(*value) : Length::inch(*value);
}

std::string_view unit_name(LengthUnit unit) { return unit == LengthUnit::mm ? "mm" : "in"; }

LengthUnit parse_unit(std::string_view name) {
  if (name == "mm") {
    return LengthUnit::mm;
  }
  if (name == "inch" || name == "in") {
    return LengthUnit::inch;
  }
  throw Error(ErrorCode::bad_input, {}, fmt::format("\"{}\" is not a unit", name),
              "use \"mm\" or \"inch\"");
}

std::string format_length(Length length, LengthUnit unit, int decimals) {
  const double value = unit == LengthUnit::mm ? length.in_mm() : length.in_mm() / kMmPerInch;
  std::string text = fmt::format("{:.{}f}", value, decimals);
  if (text.find_first_not_of("-0.") == std::string::npos && text.front() == '-') {
    text.erase(0, 1);
  }
  return text;
}

std::string format_size(Length length, LengthUnit unit) {
  std::string text = format_length(length, unit, unit == LengthUnit::mm ? 4 : 5);
  text.erase(text.find_last_not_of('0') + 1);
  if (!text.empty() && text.back() == '.') {
    text.pop_back();
  }
  return text;
}

}  // namespace spotblue
