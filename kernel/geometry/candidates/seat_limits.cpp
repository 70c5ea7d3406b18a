#include "spotblue/geometry/seat_limits.hpp"

#include <algorithm>

#include "spotblue/base/angle.hpp"

namespace spotblue {

double most_offset(const SeatSettings& settings, double diameter) {
  return std::max(settings.coaxial_offset_mm, settings.coaxial_offset_per_diameter * diameter);
}

double most_radial_gap(const SeatSettings& settings, double diameter) {
  return std::max(settings.radial_gap_mm, settings.radial_gap_per_diameter * diameter);
}

double most_overlap(const SeatSettings& settings, double diameter) {
  return std::max(settings.radial_overlap_mm, settings.radial_overlap_per_diameter * diameter);
}

bool is_past(double length, double limit, const SeatSettings& settings) {
  return length > limit + settings.same_length_mm;
}

bool is_past_facing(double gap, const SeatSettings& settings) {
  return is_past(gap, settings.axial_gap_most_mm, settings) ||
         is_past(settings.axial_gap_least_mm, gap, settings);
}

double most_tilt(double limit_deg, const SeatSettings& settings) {
  constexpr double kMetre = 1000.0;  // mm
  return limit_deg * kDegree + settings.same_length_mm / kMetre;
}

}  // namespace spotblue
