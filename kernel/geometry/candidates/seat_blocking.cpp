#include "geometry/candidates/seat_blocking.hpp"

#include <algorithm>
#include <cmath>
#include <list>
#include <numbers>
#include <utility>

#include "geometry/candidates/plane_gap.hpp"
#include "geometry/candidates/ring_gap.hpp"
#include "geometry/model/coaxial.hpp"
#include "geometry/model/plane_map.hpp"
#include "geometry/model/tolerances.hpp"
#include "spotblue/geometry/region_overlay.hpp"

namespace spotblue {
namespace {

// A saw cut in a split bush does not open the seat behind it.
constexpr double kOpenShare = 0.05;

// Everything that has to do with the ring between the two surfaces.
std::list<RingGap> spaces_in(const RadialCandidate& c, const Surroundings& around,
                             const SeatSettings& settings) {
  std::list<RingGap> spaces;
  const double thick = 0.5 * std::abs(c.hole_diameter - c.shaft_diameter);
  if (thick <= 4.0 * settings.same_length_mm) {
    return spaces;
  }
  const auto add = [&](const NearPart& part, RingGap::Part which) {
    spaces.emplace_back(c, part, which, settings);
    if (spaces.back().is_free()) {
      spaces.pop_back();
    }
  };
  const bool hole_first = c.hole_of == Which::first;
  add(hole_first ? around.first : around.second, RingGap::Part::hole);
  add(hole_first ? around.second : around.first, RingGap::Part::shaft);
  const bool overlap = c.shaft_diameter > c.hole_diameter;
  for (const NearPart& part : overlap ? std::span<const NearPart>() : around.others) {
    add(part, RingGap::Part::third);
  }
  return spaces;
}

// A thin bush pressed in flush has the ring that it overlaps its hole by between its one face and
// the hole's other: that is the press fit's, and no face stands too deep.
Region without_press_rings(Region region, const Plane& plane, double gap,
                           std::span<const RadialCandidate> radial, const SeatSettings& settings) {
  constexpr double kSquare = 1e-6;
  for (const RadialCandidate& c : radial) {
    if (c.shaft_diameter <= c.hole_diameter || norm(cross(c.axis.along, plane.normal)) > kSquare) {
      continue;
    }
    const double forward = dot(c.axis.along, plane.normal) > 0.0 ? 1.0 : -1.0;
    const double here = station(c.axis, plane.at);
    const auto [low, high] = std::minmax({here, here + forward * gap});
    if (2.0 * total_length(common_stretches(c.stretches, {{low, high}})) < high - low) {
      continue;
    }
    const Point2 centre = in_plane(plane, at_station(c.axis, here));
    const double off = distance(c.axis, c.shaft_axis.at);
    const double inner = 0.5 * c.hole_diameter - settings.same_length_mm;
    const double outer = 0.5 * c.shaft_diameter + off + settings.same_length_mm;
    region = subtract(region, subtract(disc(centre, outer), disc(centre, inner)));
  }
  return region;
}

}  // namespace

OpenRadial open_part(const RadialCandidate& c, const Surroundings& around,
                     const SeatSettings& settings) {
  const std::list<RingGap> spaces = spaces_in(c, around, settings);
  OpenRadial open;
  for (const Patch& piece : c.pieces) {
    std::vector<double> cuts{piece.from, piece.to};
    for (const RingGap& space : spaces) {
      space.add_cuts(cuts);
    }
    std::sort(cuts.begin(), cuts.end());
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
      const double from = std::max(cuts[i], piece.from);
      const double to = std::min(cuts[i + 1], piece.to);
      if (to - from < kNoLength) {
        continue;
      }
      std::vector<Arc> left = piece.arcs;
      for (const RingGap& space : spaces) {
        const auto taken = space.taken(0.5 * (from + to), left);
        if (!taken.empty()) {
          left = arcs_without(left, taken);
        }
        if (left.empty()) {
          break;
        }
      }
      if (coverage(left) > kOpenShare * coverage(piece.arcs)) {
        open.stretches.push_back({from, to});
        open.arcs.insert(open.arcs.end(), left.begin(), left.end());
        open.pieces.push_back({from, to, std::move(left)});
      }
    }
  }
  open.stretches = merged_stretches(std::move(open.stretches));
  open.arcs = merged_arcs(std::move(open.arcs));
  return open;
}

Region open_part(const PlaneCandidate& c, std::span<const RadialCandidate> radial,
                 const Surroundings& around, const SeatSettings& settings) {
  const Plane& first = around.first.product->planes[c.first];
  if (c.gap < -settings.same_length_mm) {
    return is_metal_between(c, first, around.first) && is_metal_between(c, first, around.second)
               ? without_press_rings(c.shared, first, c.gap, radial, settings)
               : Region{};
  }
  Region open = c.shared;
  if (c.gap <= 2.0 * settings.same_length_mm) {
    return open;
  }
  const Direction other =
      place_direction(around.second.frame, around.second.product->planes[c.second].normal);
  if (norm(cross(other, first.normal)) <
      kSameDirection) {  // else a face would come into its own gap
    open = without_part(std::move(open), first, c.gap, around.first, Whose::first, settings);
    open = without_part(std::move(open), first, c.gap, around.second, Whose::second, settings);
  }
  for (const NearPart& part : around.others) {
    open = without_part(std::move(open), first, c.gap, part, Whose::other, settings);
  }
  return open;
}

bool is_open(const TaperCandidate& c, const Surroundings& around, const SeatSettings& settings) {
  if (c.gap <= 2.0 * settings.same_length_mm) {
    return true;
  }
  constexpr int kStations = 9;
  constexpr int kAngles = 24;
  const auto taken = [&](Point p) {
    const auto is_metal = [&](const NearPart& part) {
      return proof::medium_at(*part.faces, place_point(inverse(part.frame), p)) ==
             proof::Medium::metal;
    };
    return is_metal(around.first) || is_metal(around.second) ||
           std::ranges::any_of(around.others, is_metal);
  };
  const Direction x = any_square(c.axis.along);
  const Direction y = third(c.axis.along, x);
  int open = 0;
  for (int i = 0; i < kStations; ++i) {
    const double z = ((i + 0.5) / kStations - 0.5) * c.engaged;
    // Half way into the gap from the hole's surface.
    const double slope = std::tan(c.hole_half_angle);
    const double r = 0.5 * c.diameter + z * slope - 0.5 * c.gap / std::cos(c.hole_half_angle);
    for (int j = 0; j < kAngles; ++j) {
      const double angle = 2.0 * std::numbers::pi * (j + 0.5) / kAngles;
      const Point p = at_station(c.axis, z) + r * std::cos(angle) * x + r * std::sin(angle) * y;
      open += taken(p) ? 0 : 1;
    }
  }
  return open > kOpenShare * kStations * kAngles;
}

}  // namespace spotblue
