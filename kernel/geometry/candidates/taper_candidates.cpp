#include "geometry/candidates/taper_candidates.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/model/coaxial.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {
namespace {

double radius_at(const Cone& cone, double s) { return cone.radius + s * std::tan(cone.half_angle); }

// Whether the cone may be a chamfer: steep, and short beside its diameter. Choices of this program,
// no source.
bool is_broken_edge(const Cone& cone, const SeatSettings& settings) {
  constexpr double kSteepDeg = 15.0;
  constexpr double kShort_mm = 2.0;
  constexpr double kShortPerDiameter = 0.05;
  const double from = cone.intervals.front().low;
  const double to = cone.intervals.back().high;
  const double leg = (to - from) / std::cos(cone.half_angle);
  const double diameter = 2.0 * std::max(radius_at(cone, from), radius_at(cone, to));
  return -cone.half_angle <= most_tilt(-kSteepDeg, settings) &&
         !is_past(leg, std::max(kShort_mm, kShortPerDiameter * diameter), settings);
}

}  // namespace

std::optional<TaperCandidate> taper_candidate(const Cone& hole, const Frame& hole_frame,
                                              const Cone& shaft, const Frame& shaft_frame,
                                              const SeatSettings& settings) {
  const Line axis = place_line(hole_frame, hole.axis);
  const Line other = place_line(shaft_frame, shaft.axis);
  const double tilt_limit = most_tilt(settings.coaxial_tilt_deg, settings);
  if (dot(axis.along, other.along) <= 0.0 ||
      !parallel_within(axis.along, other.along, tilt_limit) ||
      std::abs(hole.half_angle - shaft.half_angle) > tilt_limit) {
    return std::nullopt;
  }
  const AxisTransfer transfer(hole, hole_frame, shaft, shaft_frame);
  const Stretches shared = common_stretches(hole.intervals, transfer.stretches(shaft.intervals));
  if (total_length(shared) < settings.same_length_mm) {
    return std::nullopt;
  }
  TaperCandidate c;
  const double middle = 0.5 * (shared.front().low + shared.back().high);
  const double forward = dot(other.along, axis.along);
  const double on_shaft = (middle - station(axis, other.at)) / forward;
  c.diameter = 2.0 * radius_at(hole, middle);
  c.offset = norm(at_station(other, on_shaft) - at_station(axis, middle));
  // Square to the hole's surface, met with the shaft's generator that leans by the difference.
  c.gap = (radius_at(hole, middle) - radius_at(shaft, on_shaft)) * std::cos(shaft.half_angle) /
          std::cos(hole.half_angle - shaft.half_angle);
  c.tilt = angle_between_lines(axis.along, other.along);
  c.engaged = total_length(shared);
  c.hole_half_angle = hole.half_angle;
  c.axis = {at_station(axis, middle), axis.along};
  if (is_past(c.offset, most_offset(settings, c.diameter), settings) ||
      is_past(c.gap, most_radial_gap(settings, c.diameter), settings) ||
      is_past(-c.gap, most_overlap(settings, c.diameter), settings)) {
    return std::nullopt;
  }
  c.least_gap = c.gap;
  for (const double end : {shared.front().low, shared.back().high}) {
    // Tilt lengthens the shaft's section and shears it along the axis, where its radius differs.
    const double on = (end - station(axis, other.at)) / forward;
    const double radius = radius_at(shaft, on);
    const double off = norm(at_station(other, on) - at_station(axis, end));
    const double sheared = radius * c.tilt * (0.5 * c.tilt + std::tan(shaft.half_angle));
    c.least_gap = std::min(
        c.least_gap, (radius_at(hole, end) - radius - off - sheared) * std::cos(hole.half_angle));
  }
  // A broken edge may well lie in a cone without bearing: short and steep, a taper touches.
  const bool broken_edge = is_broken_edge(hole, settings) || is_broken_edge(shaft, settings);
  return broken_edge && is_past(c.gap, settings.radial_overlap_mm, settings) ? std::nullopt
                                                                             : std::optional(c);
}

}  // namespace spotblue
