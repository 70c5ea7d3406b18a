#include "geometry/seat_overlap.hpp"

#include <algorithm>

namespace spotblue {

double most_overlap(const SeatSettings& settings, double diameter) {
  return std::max(settings.radial_overlap_mm, settings.radial_overlap_per_diameter * diameter);
}

double overlap_past_seat(const SeatSettings& settings, double diameter, double clearance,
                         double least_gap) {
  const bool pressed = clearance < -settings.same_length_mm;
  const double past = -least_gap - (pressed ? most_overlap(settings, diameter) : 0.0);
  return past > settings.same_length_mm ? past : 0.0;
}

}  // namespace spotblue
