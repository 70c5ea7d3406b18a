#include "geometry/candidates/seat_overlap.hpp"

#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {

double overlap_past_seat(const SeatSettings& settings, double diameter, double clearance,
                         double least_gap) {
  const bool pressed = clearance < -settings.same_length_mm;
  const double past = -least_gap - (pressed ? most_overlap(settings, diameter) : 0.0);
  return is_past(past, 0.0, settings) ? past : 0.0;
}

}  // namespace spotblue
