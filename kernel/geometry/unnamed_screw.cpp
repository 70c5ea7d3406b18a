#include "geometry/unnamed_screw.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "degree.hpp"
#include "geometry/coaxial.hpp"
#include "spotblue/geometry/seat_limits.hpp"
#include "spotblue/standards/threads.hpp"

namespace spotblue {
namespace {

// As radial_candidate has it: no thread of the tables is cut deeper.
constexpr double kDeepestThread = 0.2;  // of the screw's diameter

// Of the shaft's surface that lies within the hole's, along the hole's axis; mm.
double shared_length(const Cylinder& hole, const Frame& hole_frame, const Cylinder& shaft,
                     const Frame& shaft_frame) {
  const AxisTransfer transfer(hole, hole_frame, shaft, shaft_frame);
  return total_length(common_stretches(hole.intervals, transfer.stretches(shaft.intervals)));
}

std::string told(const Cylinder& hole, const Frame& hole_frame, const Cylinder& shaft,
                 const Frame& shaft_frame, const SeatSettings& settings) {
  const double deep = 0.5 * (shaft.diameter - hole.diameter);
  const double pressed =
      std::max(settings.radial_overlap_mm, settings.radial_overlap_per_diameter * hole.diameter);
  const Line axis = place_line(hole_frame, hole.axis);
  const Line other = place_line(shaft_frame, shaft.axis);
  const double off =
      std::max(settings.coaxial_offset_mm, settings.coaxial_offset_per_diameter * hole.diameter);
  if (deep <= pressed || deep > kDeepestThread * shaft.diameter ||
      !parallel_within(axis.along, other.along, settings.coaxial_tilt_deg * kDegree) ||
      distance(axis, other.at) > off) {
    return {};
  }
  const double length = shared_length(hole, hole_frame, shaft, shaft_frame);
  if (length <= settings.same_length_mm) {
    return {};
  }
  const std::string pair =
      fmt::format("screw {:.6g} in a hole of {:.6g}", shaft.diameter, hole.diameter);
  const auto thread = thread_of(Length::mm(hole.diameter), Length::mm(shaft.diameter));
  const auto size = thread ? find_thread(*thread) : std::nullopt;
  if (!size) {
    return pair + ", no thread of ours";
  }
  return length < size->pitch.in_mm()
             ? fmt::format("{}: less than a turn of {} is engaged", pair, *thread)
             : std::string();
}

}  // namespace

std::string unnamed_screw(const Product& a, const Product& b, const Frame& b_to_a,
                          const SeatSettings& settings) {
  for (const Cylinder& one : a.cylinders) {
    for (const Cylinder& other : b.cylinders) {
      if (one.side == other.side) {
        continue;
      }
      std::string text = one.side == Side::internal ? told(one, {}, other, b_to_a, settings)
                                                    : told(other, b_to_a, one, {}, settings);
      if (!text.empty()) {
        return text;
      }
    }
  }
  return {};
}

}  // namespace spotblue
