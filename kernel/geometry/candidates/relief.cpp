#include "geometry/candidates/relief.hpp"

#include <algorithm>
#include <cmath>

#include "geometry/model/coaxial.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue {
namespace {

struct Mates {
  const Cylinder& own;   // that may be a floor or a land
  const Cylinder& mate;  // that it stands in or on
};

// The floor's part is the shaft's, or the hole's, as `of_hole` says.
Mates mates_of(const RadialCandidate& c, bool of_hole, const Product& first,
               const Product& second) {
  const Product& holes = c.hole_of == Which::first ? first : second;
  const Product& shafts = c.hole_of == Which::first ? second : first;
  const Cylinder& hole = holes.cylinders[c.hole];
  const Cylinder& shaft = shafts.cylinders[c.shaft];
  return of_hole ? Mates{hole, shaft} : Mates{shaft, hole};
}

double tightest(const RadialCandidate& c) {
  return c.worn.empty() ? c.hole_diameter - c.shaft_diameter
                        : worn_over(c, c.stretches).least_clearance;
}

bool on_one_axis(const Cylinder& a, const Cylinder& b) {
  constexpr double kOneAxis = 1e-4;  // mm, over the length of both
  const double reach = std::abs(a.intervals.back().high) + std::abs(b.intervals.back().high);
  return distance(a.axis, b.axis.at) <= kOneAxis &&
         norm(cross(a.axis.along, b.axis.along)) * reach <= kOneAxis;
}

}  // namespace

std::vector<bool> reliefs(const std::vector<OpenStretches>& seats, const Product& first,
                          const Product& second, const SeatSettings& settings) {
  // Each way round: a groove in the shaft, a groove in the hole.
  const auto between_lands = [&](const OpenStretches& floor, bool of_hole) {
    const Mates here = mates_of(*floor.candidate, of_hole, first, second);
    bool below = false;
    bool above = false;
    for (const OpenStretches& land : seats) {
      const Mates there = mates_of(*land.candidate, of_hole, first, second);
      if (&there.mate != &here.mate || &there.own == &here.own ||
          !is_past(tightest(*floor.candidate), tightest(*land.candidate), settings) ||
          !on_one_axis(here.own, there.own)) {
        continue;
      }
      // Stations on the land's axis told on the floor's: where the mate is the hole it is one line.
      const auto on_floor = [&](double s) {
        return station(floor.candidate->axis, at_station(land.candidate->axis, s));
      };
      for (const auto& [from, to] : *land.stretches) {
        const auto [low, high] = std::minmax({on_floor(from), on_floor(to)});
        below = below || !is_past(high, floor.stretches->front().low, settings);
        above = above || !is_past(floor.stretches->back().high, low, settings);
      }
    }
    return below && above;
  };
  std::vector<bool> found;
  found.reserve(seats.size());
  for (const OpenStretches& one : seats) {
    found.push_back(between_lands(one, false) || between_lands(one, true));
  }
  return found;
}

}  // namespace spotblue
