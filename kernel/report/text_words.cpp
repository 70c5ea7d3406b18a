#include "report/text_words.hpp"

#include <fmt/format.h>

#include <cmath>

#include "spotblue/base/angle.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

constexpr double kMmPerInch = 25.4;

std::string axis_number(double value) {
  return without_minus_zero(fmt::format("{:.4g}", std::abs(value) < 1e-9 ? 0.0 : value));
}

}  // namespace

std::string without_minus_zero(std::string text) {
  if (text.find_first_not_of("-0.") == std::string::npos && text.front() == '-') {
    text.erase(0, 1);
  }
  return text;
}

std::string length_cell(double length_mm, LengthUnit unit) {
  return format_length(Length::mm(length_mm), unit, unit == LengthUnit::mm ? 4 : 5);
}

std::string place_cell(double length_mm, LengthUnit unit) {
  return format_length(Length::mm(length_mm), unit, unit == LengthUnit::mm ? 3 : 4);
}

std::string area_cell(double area_mm2, LengthUnit unit) {
  return unit == LengthUnit::mm ? fmt::format("{:.2f}", area_mm2)
                                : fmt::format("{:.4f}", area_mm2 / (kMmPerInch * kMmPerInch));
}

std::string volume_cell(double volume_mm3, LengthUnit unit) {
  const double volume =
      unit == LengthUnit::mm ? volume_mm3 : volume_mm3 / (kMmPerInch * kMmPerInch * kMmPerInch);
  return fmt::format("{:.5g}", volume);
}

std::string angle_cell(double angle_rad) {
  return without_minus_zero(fmt::format("{:.3f}", degrees(angle_rad)));
}

std::string point_text(const Point& point, LengthUnit unit) {
  return fmt::format("{}, {}, {}", place_cell(point.x, unit), place_cell(point.y, unit),
                     place_cell(point.z, unit));
}

std::string direction_text(const Direction& along) {
  constexpr double kSame = 1e-9;
  const Point size{std::abs(along.x()), std::abs(along.y()), std::abs(along.z())};
  if (size.y < kSame && size.z < kSame) {
    return "along x";
  }
  if (size.x < kSame && size.z < kSame) {
    return "along y";
  }
  if (size.x < kSame && size.y < kSame) {
    return "along z";
  }
  return fmt::format("along {}, {}, {}", axis_number(along.x()), axis_number(along.y()),
                     axis_number(along.z()));
}

std::string_view unit_word(LengthUnit unit) { return unit == LengthUnit::mm ? "mm" : "inches"; }

std::string count_text(std::size_t count) {
  const std::string digits = std::to_string(count);
  std::string text;
  for (std::size_t i = 0; i < digits.size(); ++i) {
    if (i > 0 && (digits.size() - i) % 3 == 0) {
      text += ',';
    }
    text += digits[i];
  }
  return text;
}

std::string counted(std::size_t count, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", count == 0 ? "no" : count_text(count), count == 1 ? one : many);
}

}  // namespace spotblue
