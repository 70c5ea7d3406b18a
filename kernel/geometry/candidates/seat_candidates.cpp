#include "geometry/candidates/seat_candidates.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/candidates/plane_candidates.hpp"
#include "geometry/candidates/taper_candidates.hpp"
#include "geometry/model/coaxial.hpp"
#include "geometry/model/tolerances.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/base/stop.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {
namespace {

void add_radial(PairCandidates& result, const Product& first, const Product& second,
                const Frame& frame, const SeatSettings& settings) {
  for (std::size_t i = 0; i < first.cylinders.size(); ++i) {
    stop_if_asked();
    for (std::size_t j = 0; j < second.cylinders.size(); ++j) {
      const Cylinder& a = first.cylinders[i];
      const Cylinder& b = second.cylinders[j];
      if (a.side == b.side) {
        continue;
      }
      const bool hole_first = a.side == Side::internal;
      auto c = hole_first ? radial_candidate(a, Frame{}, b, frame, settings)
                          : radial_candidate(b, frame, a, Frame{}, settings);
      if (c) {
        c->hole_of = hole_first ? Which::first : Which::second;
        c->hole = hole_first ? i : j;
        c->shaft = hole_first ? j : i;
        result.radial.push_back(std::move(*c));
      }
    }
  }
}

void add_tapers(PairCandidates& result, const Product& first, const Product& second,
                const Frame& frame, const SeatSettings& settings) {
  for (std::size_t i = 0; i < first.cones.size(); ++i) {
    for (std::size_t j = 0; j < second.cones.size(); ++j) {
      if (first.cones[i].side == second.cones[j].side) {
        continue;
      }
      const bool hole_first = first.cones[i].side == Side::internal;
      auto c = hole_first
                   ? taper_candidate(first.cones[i], Frame{}, second.cones[j], frame, settings)
                   : taper_candidate(second.cones[j], frame, first.cones[i], Frame{}, settings);
      if (c) {
        c->hole_of = hole_first ? Which::first : Which::second;
        c->hole = hole_first ? i : j;
        c->shaft = hole_first ? j : i;
        result.tapers.push_back(*c);
      }
    }
  }
}

void add_common_axes(PairCandidates& result, const Product& first, const Product& second,
                     const Frame& frame, const SeatSettings& settings) {
  const auto same_line = [](const Line& a, const Line& b) {
    return distance(a, b.at) < kOnePlace && parallel_within(a.along, b.along, kOneLine);
  };
  // Steps of one shaft are on one line, and one tie to it is enough.
  const auto tied = [&](const Line& axis, const Cylinder& other) {
    return std::find_if(result.common_axes.begin(), result.common_axes.end(),
                        [&](const CommonAxis& known) {
                          return same_line(known.axis, axis) &&
                                 same_line(second.cylinders[known.second].axis, other.axis);
                        });
  };
  // Rounded corners of two plates may well line up; they are no turned features.
  const auto turned = [](const Cylinder& c) { return c.coverage > 150.0 * kDegree; };
  const auto part_round_only = [](const Cylinder& c) { return c.coverage < 270.0 * kDegree; };
  for (std::size_t j = 0; j < second.cylinders.size(); ++j) {
    if (!turned(second.cylinders[j])) {
      continue;
    }
    const Line other = place_line(frame, second.cylinders[j].axis);
    for (std::size_t i = 0; i < first.cylinders.size(); ++i) {
      if (!turned(first.cylinders[i])) {
        continue;
      }
      const Line& axis = first.cylinders[i].axis;
      const double near = most_offset(
          settings, std::min(first.cylinders[i].diameter, second.cylinders[j].diameter));
      if (!is_past(distance(axis, other.at), near, settings) &&
          parallel_within(axis.along, other.along,
                          most_tilt(settings.coaxial_tilt_deg, settings))) {
        const bool part_round =
            part_round_only(first.cylinders[i]) && part_round_only(second.cylinders[j]);
        const auto known = tied(axis, second.cylinders[j]);
        if (known != result.common_axes.end()) {
          known->part_round = known->part_round && part_round;
        } else {
          result.common_axes.push_back({i, j, axis, part_round});
        }
      }
    }
  }
}

}  // namespace

PairCandidates pair_candidates(const Product& first, const Product& second,
                               const Frame& second_in_first, const SeatSettings& settings) {
  PairCandidates result;
  add_radial(result, first, second, second_in_first, settings);
  add_tapers(result, first, second, second_in_first, settings);
  add_common_axes(result, first, second, second_in_first, settings);
  result.planes = plane_candidates(first, second, second_in_first, result.common_axes, settings);
  result.widths = take_widths(first, second, second_in_first, result.planes);
  return result;
}

}  // namespace spotblue
