#include "geometry/seat_blocking.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "geometry/coaxial.hpp"
#include "geometry/plane_map.hpp"

namespace spotblue {
namespace {

constexpr double kDegree = std::numbers::pi / 180.0;
// A saw cut in a split bush does not open the seat behind it.
constexpr double kOpenShare = 0.05;

// A coaxial surface of a third part, told on the candidate's axis.
struct Surface {
  double radius;
  Side side;
  double from, to;
  std::vector<Arc> arcs;
};

struct BaseAxis {
  Line axis;
  Direction zero;
};

std::vector<Surface> coaxial_surfaces(const RadialCandidate& c, const Neighbour& neighbour,
                                      const SeatSettings& settings) {
  std::vector<Surface> surfaces;
  const double most_offset =
      std::max(settings.coaxial_offset_mm, settings.coaxial_offset_per_diameter * c.hole_diameter);
  // The candidate's axis with its own count of angles, right- or left-handed.
  const Frame frame{};
  for (const Cylinder& cylinder : neighbour.product->cylinders) {
    const Line axis = place_line(neighbour.frame, cylinder.axis);
    if (!parallel_within(axis.along, c.axis.along, settings.coaxial_tilt_deg * kDegree) ||
        distance(c.axis, axis.at) > most_offset) {
      continue;
    }
    const AxisTransfer transfer(BaseAxis{c.axis, c.zero}, frame, cylinder, neighbour.frame);
    const bool turned = dot(cross(c.axis.along, c.zero), c.quarter) < 0.0;
    for (const Patch& patch : cylinder.patches) {
      const auto [from, to] = transfer.stretch(patch.from, patch.to);
      std::vector<Arc> arcs = transfer.arcs(patch.arcs);
      if (turned) {
        arcs = recounted_arcs(arcs, 0.0, -1);
      }
      surfaces.push_back({0.5 * cylinder.diameter, cylinder.side, from, to, std::move(arcs)});
    }
  }
  std::sort(surfaces.begin(), surfaces.end(),
            [](const Surface& a, const Surface& b) { return a.radius < b.radius; });
  return surfaces;
}

// Angles at station z where this part's material reaches into the ring between two radii.
std::vector<Arc> blocked_arcs(const std::vector<Surface>& surfaces, double z, double inner,
                              double outer, double same) {
  std::vector<Arc> blocked;
  double material_from = 0.0;  // until a bore is met, material from the axis outwards
  const Surface* bore = nullptr;
  const auto add = [&](double to, const std::vector<Arc>& arcs) {
    if (std::min(to, outer) - std::max(material_from, inner) > same) {
      blocked.insert(blocked.end(), arcs.begin(), arcs.end());
    }
  };
  for (const Surface& s : surfaces) {
    if (z <= s.from || z >= s.to) {
      continue;
    }
    if (s.side == Side::internal) {
      material_from = s.radius;
      bore = &s;
    } else {
      add(s.radius, s.arcs);
      bore = nullptr;
      material_from = std::numeric_limits<double>::infinity();
    }
  }
  if (bore != nullptr) {
    add(std::numeric_limits<double>::infinity(), bore->arcs);
  }
  return blocked;
}

}  // namespace

OpenRadial open_part(const RadialCandidate& c, std::span<const Neighbour> neighbours,
                     const SeatSettings& settings) {
  const double inner = 0.5 * std::min(c.shaft_diameter, c.hole_diameter);
  const double outer = 0.5 * c.hole_diameter;
  std::vector<std::vector<Surface>> others;
  if (outer - inner > settings.same_length_mm) {
    for (const Neighbour& neighbour : neighbours) {
      auto surfaces = coaxial_surfaces(c, neighbour, settings);
      if (!surfaces.empty()) {
        others.push_back(std::move(surfaces));
      }
    }
  }
  if (others.empty()) {
    return {c.stretches, c.arcs};
  }
  std::vector<double> cuts;
  for (const auto& [from, to] : c.stretches) {
    cuts.insert(cuts.end(), {from, to});
  }
  for (const auto& surfaces : others) {
    for (const Surface& s : surfaces) {
      cuts.insert(cuts.end(), {s.from, s.to});
    }
  }
  std::sort(cuts.begin(), cuts.end());
  OpenRadial open;
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
    const Stretches here = common_stretches(c.stretches, {{cuts[i], cuts[i + 1]}});
    if (total_length(here) < settings.same_length_mm) {
      continue;
    }
    std::vector<Arc> blocked;
    for (const auto& surfaces : others) {
      const auto arcs = blocked_arcs(surfaces, 0.5 * (cuts[i] + cuts[i + 1]), inner, outer,
                                     settings.same_length_mm);
      blocked.insert(blocked.end(), arcs.begin(), arcs.end());
    }
    const std::vector<Arc> left = arcs_without(c.arcs, blocked);
    if (coverage(left) > kOpenShare * coverage(c.arcs)) {
      open.stretches.insert(open.stretches.end(), here.begin(), here.end());
      open.arcs.insert(open.arcs.end(), left.begin(), left.end());
    }
  }
  open.stretches = merged_stretches(std::move(open.stretches));
  open.arcs = merged_arcs(std::move(open.arcs));
  return open;
}

Region open_part(const PlaneCandidate& c, const Plane& first_plane,
                 std::span<const Neighbour> neighbours, const SeatSettings& settings) {
  Region open = c.shared;
  if (c.gap <= settings.same_length_mm) {
    return open;
  }
  const double beyond = std::min(c.gap, -settings.axial_gap_least_mm);
  for (const Neighbour& neighbour : neighbours) {
    for (const Plane& plane : neighbour.product->planes) {
      const Direction normal = place_direction(neighbour.frame, plane.normal);
      const double cosine = dot(normal, first_plane.normal);
      if (std::abs(cosine) < std::cos(settings.facing_tilt_deg * kDegree)) {
        continue;
      }
      const double at =
          dot(place_point(neighbour.frame, plane.at) - first_plane.at, first_plane.normal);
      // A face towards the first part has material just beyond it, one towards the second just
      // before.
      const bool between = cosine < 0.0 ? at > -beyond && at < c.gap - settings.same_length_mm
                                        : at > settings.same_length_mm && at < c.gap + beyond;
      if (between) {
        open = subtract(open, outline_in(first_plane, plane, neighbour.frame));
      }
    }
  }
  return open;
}

}  // namespace spotblue
