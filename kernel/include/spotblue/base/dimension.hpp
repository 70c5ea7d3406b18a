#pragma once
/// @file
/// Numbers with what they are numbers of, so that whoever shows one knows its unit.

#include "spotblue/base/angle.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"

namespace spotblue {

/// What a number is of. Each is held in one unit, which ends its key in JSON.
enum class Dimension {
  length,
  area,
  volume,
  angle,
  force,
  torque,
  pressure,
  speed,
  pressure_speed,
  temperature,
  roughness,
  rotation,
  share,
  number,
};
constexpr auto describe(const Dimension*) {
  return words("The unit in which a number of each dimension is held; a plain number has none.",
               "mm", "mm2", "mm3", "deg", "n", "nm", "mpa", "m_s", "mpa_m_s", "c", "um", "rpm",
               "percent", "");
}

/// A number in the unit of its dimension.
struct Measure {
  double value = 0.0;
  Dimension dimension = Dimension::number;
  bool operator==(const Measure&) const = default;
};

[[nodiscard]] constexpr Measure measure(Length length) {
  return {length.in_mm(), Dimension::length};
}
[[nodiscard]] constexpr Measure millimetres(double mm) { return {mm, Dimension::length}; }
[[nodiscard]] constexpr Measure square_millimetres(double mm2) { return {mm2, Dimension::area}; }
[[nodiscard]] constexpr Measure cubic_millimetres(double mm3) { return {mm3, Dimension::volume}; }
[[nodiscard]] constexpr Measure angle(double rad) { return {degrees(rad), Dimension::angle}; }
[[nodiscard]] constexpr Measure angle_of_degrees(double deg) { return {deg, Dimension::angle}; }
[[nodiscard]] constexpr Measure newtons(double n) { return {n, Dimension::force}; }
[[nodiscard]] constexpr Measure newton_metres(double nm) { return {nm, Dimension::torque}; }
[[nodiscard]] constexpr Measure megapascals(double mpa) { return {mpa, Dimension::pressure}; }
[[nodiscard]] constexpr Measure metres_per_second(double m_s) { return {m_s, Dimension::speed}; }
[[nodiscard]] constexpr Measure megapascal_metres_per_second(double mpa_m_s) {
  return {mpa_m_s, Dimension::pressure_speed};
}
[[nodiscard]] constexpr Measure degrees_celsius(double c) { return {c, Dimension::temperature}; }
[[nodiscard]] constexpr Measure micrometres(double um) { return {um, Dimension::roughness}; }
[[nodiscard]] constexpr Measure turns_per_minute(double rpm) { return {rpm, Dimension::rotation}; }
[[nodiscard]] constexpr Measure percent(double percent) { return {percent, Dimension::share}; }
[[nodiscard]] constexpr Measure plain_number(double number) { return {number, Dimension::number}; }

}  // namespace spotblue
