#pragma once
/// @file
/// Numbers and names as a text shows them.

#include <cstddef>
#include <string>
#include <string_view>

#include "spotblue/base/unit.hpp"
#include "spotblue/geometry/vector.hpp"

namespace spotblue {

/// "0.000" for "-0.000".
[[nodiscard]] std::string without_minus_zero(std::string text);
/// Lengths to 0.0001 mm or 0.00001 in, without the unit.
[[nodiscard]] std::string length_cell(double length_mm, LengthUnit unit);
/// With no more than three decimals in mm and four in inch: positions, engaged lengths.
[[nodiscard]] std::string place_cell(double length_mm, LengthUnit unit);
[[nodiscard]] std::string area_cell(double area_mm2, LengthUnit unit);
[[nodiscard]] std::string volume_cell(double volume_mm3, LengthUnit unit);
[[nodiscard]] std::string angle_cell(double angle_rad);
[[nodiscard]] std::string point_text(const Point& point, LengthUnit unit);
/// "along z" or "along 0.6, 0, 0.8".
[[nodiscard]] std::string direction_text(const Direction& along);
/// "mm" or "inches", for a sentence.
[[nodiscard]] std::string_view unit_word(LengthUnit unit);
/// 45,000
[[nodiscard]] std::string count_text(std::size_t count);
/// "1 seat", "2 seats", "no seats"
[[nodiscard]] std::string counted(std::size_t count, std::string_view one, std::string_view many);

}  // namespace spotblue
