#include "geometry/seat_blocking.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "degree.hpp"
#include "geometry/coaxial.hpp"
#include "geometry/plane_map.hpp"

namespace spotblue {
namespace {

// A saw cut in a split bush does not open the seat behind it.
constexpr double kOpenShare = 0.05;

struct BaseAxis {
  Line axis;
  Direction zero;
};

// A third part's surfaces about the candidate's axis, told in the candidate's stations and angles.
class ThirdPart {
 public:
  ThirdPart(const RadialCandidate& c, const Neighbour& neighbour, const SeatSettings& settings) {
    const double near = std::max(settings.coaxial_offset_mm,
                                 settings.coaxial_offset_per_diameter * c.hole_diameter);
    const auto coaxial = [&](const Line& axis) {
      return parallel_within(axis.along, c.axis.along, settings.coaxial_tilt_deg * kDegree) &&
             distance(c.axis, axis.at) <= near;
    };
    for (const Cylinder& cylinder : neighbour.product->cylinders) {
      if (coaxial(place_line(neighbour.frame, cylinder.axis))) {
        add(c, neighbour, cylinder, 0.5 * cylinder.diameter, 0.0);
      }
    }
    for (const Cone& cone : neighbour.product->cones) {
      if (coaxial(place_line(neighbour.frame, cone.axis))) {
        add(c, neighbour, cone, cone.radius, std::tan(cone.half_angle));
      }
    }
    for (const OtherFace& face : neighbour.product->others) {
      const Line axis = place_line(neighbour.frame, face.axis);
      if (face.revolved && coaxial(axis)) {
        const double scale = dot(axis.along, c.axis.along);
        const double start = station(c.axis, axis.at);
        const auto [from, to] = std::minmax({start + scale * face.from, start + scale * face.to});
        rings_.push_back({face.inner, from, to});
      }
    }
  }

  [[nodiscard]] bool is_empty() const { return surfaces_.empty(); }

  void add_ends(std::vector<double>& cuts) const {
    for (const Surface& s : surfaces_) {
      cuts.insert(cuts.end(), {s.from, s.to});
    }
  }

  // Angles at station z where this part's material reaches into the ring between two radii.
  [[nodiscard]] std::vector<Arc> blocked(double z, double inner, double outer, double same) const {
    std::vector<const Surface*> here;
    for (const Surface& s : surfaces_) {
      if (z > s.from && z < s.to) {
        here.push_back(&s);
      }
    }
    std::sort(here.begin(), here.end(), [z](const Surface* a, const Surface* b) {
      return a->radius_at(z) < b->radius_at(z);
    });
    std::vector<Arc> arcs;
    const auto add_where = [&](double from, double to, const Surface& s) {
      if (std::min(to, outer) - std::max(from, inner) > same) {
        arcs.insert(arcs.end(), s.arcs.begin(), s.arcs.end());
      }
    };
    double material_from = least_ring(z);
    const Surface* bore = nullptr;
    for (const Surface* s : here) {
      if (s->side == Side::internal) {
        material_from = s->radius_at(z);
        bore = s;
      } else {
        add_where(material_from, s->radius_at(z), *s);
        bore = nullptr;
        material_from = std::numeric_limits<double>::infinity();
      }
    }
    if (bore != nullptr) {
      add_where(material_from, std::numeric_limits<double>::infinity(), *bore);
    }
    return arcs;
  }

 private:
  struct Surface {
    double radius;  // at station `zero`
    double zero;
    double slope;
    Side side;
    double from, to;
    std::vector<Arc> arcs;
    [[nodiscard]] double radius_at(double z) const { return radius + slope * (z - zero); }
  };
  struct Ring {
    double inner;
    double from, to;
  };

  template <typename Feature>
  void add(const RadialCandidate& c, const Neighbour& neighbour, const Feature& feature,
           double radius, double slope) {
    const AxisTransfer transfer(BaseAxis{c.axis, c.zero}, Frame{}, feature, neighbour.frame);
    const Line axis = place_line(neighbour.frame, feature.axis);
    const double along = dot(axis.along, c.axis.along) > 0.0 ? 1.0 : -1.0;
    // The candidate may count its angles the other way round, where its hole is mirrored.
    const bool turned = dot(cross(c.axis.along, c.zero), c.quarter) < 0.0;
    for (const Patch& patch : feature.patches) {
      const auto [from, to] = transfer.stretch(patch.from, patch.to);
      std::vector<Arc> arcs = transfer.arcs(patch.arcs);
      if (turned) {
        arcs = recounted_arcs(arcs, 0.0, -1);
      }
      surfaces_.push_back({radius, station(c.axis, axis.at), along * slope, feature.side, from, to,
                           std::move(arcs)});
    }
  }

  // Without a bore the material starts at the axis, or at a rounding that stands in for the bore.
  [[nodiscard]] double least_ring(double z) const {
    double least = 0.0;
    for (const Ring& ring : rings_) {
      if (z >= ring.from && z <= ring.to) {
        least = least == 0.0 ? ring.inner : std::min(least, ring.inner);
      }
    }
    return least;
  }

  std::vector<Surface> surfaces_;
  std::vector<Ring> rings_;
};

}  // namespace

OpenRadial open_part(const RadialCandidate& c, std::span<const Neighbour> neighbours,
                     const SeatSettings& settings) {
  const double inner = 0.5 * std::min(c.shaft_diameter, c.hole_diameter);
  const double outer = 0.5 * c.hole_diameter;
  std::vector<ThirdPart> others;
  if (outer - inner > settings.same_length_mm) {
    for (const Neighbour& neighbour : neighbours) {
      ThirdPart part(c, neighbour, settings);
      if (!part.is_empty()) {
        others.push_back(std::move(part));
      }
    }
  }
  OpenRadial open;
  for (const Patch& piece : c.pieces) {
    std::vector<double> cuts{piece.from, piece.to};
    for (const ThirdPart& part : others) {
      part.add_ends(cuts);
    }
    std::sort(cuts.begin(), cuts.end());
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
      const double from = std::max(cuts[i], piece.from);
      const double to = std::min(cuts[i + 1], piece.to);
      if (to - from < 1e-9) {
        continue;
      }
      std::vector<Arc> left = piece.arcs;
      for (const ThirdPart& part : others) {
        const auto blocked = part.blocked(0.5 * (from + to), inner, outer, settings.same_length_mm);
        if (!blocked.empty()) {
          left = arcs_without(left, blocked);
        }
      }
      if (coverage(left) > kOpenShare * coverage(piece.arcs)) {
        open.stretches.emplace_back(from, to);
        open.arcs.insert(open.arcs.end(), left.begin(), left.end());
      }
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
