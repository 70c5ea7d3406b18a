#include "geometry/seats/unnamed_screw.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "geometry/model/coaxial.hpp"
#include "spotblue/geometry/seat_limits.hpp"
#include "spotblue/standards/threads.hpp"

namespace spotblue {
namespace {

// Of the shaft's surface that lies within the hole's, along the hole's axis; mm.
double shared_length(const Cylinder& hole, const Frame& hole_frame, const Cylinder& shaft,
                     const Frame& shaft_frame) {
  const AxisTransfer transfer(hole, hole_frame, shaft, shaft_frame);
  return total_length(common_stretches(hole.intervals, transfer.stretches(shaft.intervals)));
}

// By diameter, within what thread_of allows to a screw, a drilled and a threaded hole: less may be
// pressed, more is deeper than the profile.
bool deep_as_a_thread(double hole, double screw) {
  constexpr double kAboutItsSize = 0.15;
  constexpr double kLeast = 0.72;      // of the pitch ...
  constexpr double kLeastLess = 0.16;  // ... less that, mm, but no less than
  constexpr double kLeastOfAll = 0.4;  // of the pitch
  constexpr double kMost = 1.25;       // of the pitch ...
  constexpr double kMostMore = 0.13;   // ... and mm
  static const std::vector<ThreadSize> all = threads();
  return std::any_of(all.begin(), all.end(), [&](const ThreadSize& thread) {
    const double pitch = thread.pitch.in_mm();
    return std::abs(thread.major_diameter.in_mm() - screw) <= kAboutItsSize * screw &&
           screw - hole >= std::max(kLeastOfAll * pitch, kLeast * pitch - kLeastLess) &&
           screw - hole <= kMost * pitch + kMostMore;
  });
}

std::optional<std::string> told(const Cylinder& hole, const Frame& hole_frame,
                                const Cylinder& shaft, const Frame& shaft_frame,
                                const SeatSettings& settings) {
  const Line axis = place_line(hole_frame, hole.axis);
  const Line other = place_line(shaft_frame, shaft.axis);
  if (!is_past(0.5 * (shaft.diameter - hole.diameter), most_overlap(settings, hole.diameter),
               settings) ||
      !parallel_within(axis.along, other.along, most_tilt(settings.coaxial_tilt_deg, settings)) ||
      is_past(distance(axis, other.at), most_offset(settings, hole.diameter), settings)) {
    return {};
  }
  const double length = shared_length(hole, hole_frame, shaft, shaft_frame);
  if (length <= settings.same_length_mm) {
    return {};
  }
  const auto thread =
      thread_of(Diameter(Length::mm(hole.diameter)), Diameter(Length::mm(shaft.diameter)));
  const auto size = thread ? find_thread(*thread) : std::nullopt;
  if (!size) {
    return deep_as_a_thread(hole.diameter, shaft.diameter) ? std::optional(std::string())
                                                           : std::nullopt;
  }
  return length < size->pitch.in_mm() ? thread : std::nullopt;
}

}  // namespace

std::optional<UnnamedThread> unnamed_thread(const Product& a, const Product& b, const Frame& b_to_a,
                                            const SeatSettings& settings) {
  for (std::size_t i = 0; i < a.cylinders.size(); ++i) {
    for (std::size_t j = 0; j < b.cylinders.size(); ++j) {
      const Cylinder& one = a.cylinders[i];
      const Cylinder& other = b.cylinders[j];
      if (one.side == other.side) {
        continue;
      }
      const bool hole_first = one.side == Side::internal;
      auto thread = hole_first ? told(one, {}, other, b_to_a, settings)
                               : told(other, b_to_a, one, {}, settings);
      if (thread) {
        return UnnamedThread{hole_first, hole_first ? i : j, hole_first ? j : i,
                             *std::move(thread)};
      }
    }
  }
  return {};
}

}  // namespace spotblue
