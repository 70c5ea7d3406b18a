#include "geometry/fouls/seat_foul.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "geometry/model/tolerances.hpp"
#include "spotblue/geometry/seat_limits.hpp"

namespace spotblue::proof {
namespace {

constexpr double kPi = std::numbers::pi;
/// Pieces of the engaged stretch that the crescent of a tilted shaft is summed over.
constexpr int kPieces = 64;

/// Three-point Gauss rule on 0..1: exact to the fifth power (Abramowitz & Stegun 25.4.30, from
/// memory).
struct Knot {
  double at, weight;
};
constexpr std::array<Knot, 3> kGauss{
    {{0.1127016653792583, 5.0 / 18.0}, {0.5, 8.0 / 18.0}, {0.8872983346207417, 5.0 / 18.0}}};

/// From the hole's axis to the shaft's at a station, square to the hole's axis.
Point offset_at(const Line& hole, const Line& shaft, double s) {
  const Point p = at_station(hole, s);
  const double along = dot(shaft.along, hole.along);
  const double t = dot(p - shaft.at, hole.along) / along;
  const Point across = at_station(shaft, t) - p;
  return across - dot(across, hole.along) * hole.along;
}

Line placed(const Model& model, const FeatureRef& feature, const Line& line) {
  return place_line(model.occurrences[feature.occurrence].frame, line);
}

const Plane& plane_of(const Model& model, const FeatureRef& feature) {
  return model.products[model.occurrences[feature.occurrence].product].planes[feature.index];
}

/// What of a shaft lies outside a hole, where their axes part; radii change evenly over a stretch
/// of the hole's axis.
struct Crescent {
  Line axis, shaft;
  double from, to;
  double tilt;
  std::array<double, 2> hole_radius, shaft_radius;

  [[nodiscard]] double share(double s) const { return to > from ? (s - from) / (to - from) : 0.0; }
  [[nodiscard]] double hole_at(double s) const {
    return std::lerp(hole_radius[0], hole_radius[1], share(s));
  }
  [[nodiscard]] double shaft_at(double s) const {
    return std::lerp(shaft_radius[0], shaft_radius[1], share(s));
  }
  [[nodiscard]] double past(double s) const {
    return norm(offset_at(axis, shaft, s)) + shaft_at(s) - hole_at(s);
  }

  /// Whether the shaft is out of the hole at both ends and not between: askew, it fouls twice.
  [[nodiscard]] bool in_two() const {
    if (past(from) <= 0.0 || past(to) <= 0.0) {
      return false;
    }
    for (int i = 1; i < kPieces; ++i) {
      if (past(from + (to - from) * i / kPieces) <= 0.0) {
        return true;
      }
    }
    return false;
  }

  /// mm2, over the stretch.
  [[nodiscard]] double mean_area() const {
    const Point slope = shaft.along - dot(shaft.along, axis.along) * axis.along;
    const bool leans = tilt > 0.0 && norm(slope) > kRounding;
    const Direction lean = leans ? unit(slope) : any_square(axis.along);
    const Direction across = third(axis.along, lean);
    double mean = 0.0;
    for (int i = 0; i < kPieces; ++i) {
      for (const Knot& knot : kGauss) {
        const double s = from + (to - from) * (i + knot.at) / kPieces;
        const Point off = offset_at(axis, shaft, s);
        mean +=
            knot.weight / kPieces *
            (leans ? leaning_area(hole_at(s), shaft_at(s), tilt, {dot(off, lean), dot(off, across)})
                   : crescent_area(hole_at(s), shaft_at(s), norm(off)));
      }
    }
    return mean;
  }

  [[nodiscard]] double deepest() const {
    const double middle = 0.5 * (from + to);
    double best = middle;
    for (const double s : {from, to}) {
      best = past(s) > past(best) + kNoLength ? s : best;
    }
    // A little inside the stretch, so that the point is not on an end face.
    const double inward = 0.01 * (to - from);
    return std::clamp(best, from + inward, to - inward);
  }

  [[nodiscard]] Point inside() const {
    const double s = deepest();
    const Point off = offset_at(axis, shaft, s);
    const double out = 0.5 * (hole_at(s) + std::max(hole_at(s), norm(off) + shaft_at(s)));
    return at_station(axis, s) + out * (norm(off) > 0.0 ? unit(off) : any_square(axis.along));
  }
};

/// A placed plane face that can be asked whether it covers the point below `p`.
struct PlacedPlane {
  Line normal;
  Direction u, v;
  const Region* outline;

  [[nodiscard]] bool covers(Point p) const {
    return contains(*outline, {dot(p - normal.at, u), dot(p - normal.at, v)});
  }
  [[nodiscard]] Point at(Point2 p) const { return normal.at + p.u * u + p.v * v; }
};

PlacedPlane placed_plane(const Model& model, const FeatureRef& feature) {
  const Plane& plane = plane_of(model, feature);
  const Frame& frame = model.occurrences[feature.occurrence].frame;
  return {placed(model, feature, {plane.at, plane.normal}), place_direction(frame, plane.u),
          place_direction(frame, third(plane.normal, plane.u)), &plane.outline};
}

/// Points that may lie in what both outlines cover, likeliest first.
std::vector<Point> seat_points(const Seats& seats, const AxialSeat& seat, const PlacedPlane& a,
                               const PlacedPlane& b) {
  constexpr int kAngles = 32;
  constexpr std::size_t kCorners = 24;
  std::vector<Point> points;
  if (seat.centre_line && seat.inner && seat.outer) {
    const Line& line = seats.centre_lines[*seat.centre_line].line;
    const Point foot = line.at + dot(a.normal.at - line.at, line.along) * line.along;
    const Direction x = any_square(line.along);
    const Direction y = third(line.along, x);
    for (int i = 0; i < kAngles; ++i) {
      const double angle = 2.0 * kPi * i / kAngles;
      const double radius = 0.25 * (*seat.inner + *seat.outer);
      points.push_back(foot + radius * std::cos(angle) * x + radius * std::sin(angle) * y);
    }
  }
  points.push_back(seat.axis.at);
  std::vector<Point> corners;
  for (const PlacedPlane* plane : {&a, &b}) {
    for (const Edge2& edge : plane->outline->edges) {
      corners.push_back(plane->at(edge.from));
      corners.push_back(plane->at(edge.sweep == 0.0 ? edge.to : edge.centre));
    }
  }
  corners.resize(std::min(corners.size(), kCorners));
  for (std::size_t i = 0; i < corners.size(); ++i) {
    for (std::size_t j = i + 1; j < corners.size(); ++j) {
      points.push_back(0.5 * (corners[i] + corners[j]));
    }
  }
  return points;
}

}  // namespace

double crescent_area(double hole, double shaft, double offset) {
  if (offset + shaft <= hole) {
    return 0.0;
  }
  const double disc = kPi * shaft * shaft;
  if (offset >= hole + shaft) {
    return disc;
  }
  if (offset + hole <= shaft) {
    return disc - kPi * hole * hole;
  }
  // Half angles of the two arcs that bound what the circles share, seen from either centre.
  const double d = offset;
  const double of_hole =
      std::acos(std::clamp((d * d + hole * hole - shaft * shaft) / (2.0 * d * hole), -1.0, 1.0));
  const double of_shaft =
      std::acos(std::clamp((d * d + shaft * shaft - hole * hole) / (2.0 * d * shaft), -1.0, 1.0));
  const double shared = hole * hole * (of_hole - 0.5 * std::sin(2.0 * of_hole)) +
                        shaft * shaft * (of_shaft - 0.5 * std::sin(2.0 * of_shaft));
  return std::max(0.0, disc - shared);
}

double leaning_area(double hole, double shaft, double tilt, Point2 offset) {
  // Rays from the hole's axis, u along the lean: what of each lies between hole and ellipse.
  constexpr int kRays = 1024;
  const double a2 = std::pow(shaft / std::cos(tilt), 2);
  const double b2 = shaft * shaft;
  double sum = 0.0;
  for (int i = 0; i < kRays; ++i) {
    const double c = std::cos(2.0 * kPi * i / kRays);
    const double s = std::sin(2.0 * kPi * i / kRays);
    const double qa = c * c / a2 + s * s / b2;
    const double qb = offset.u * c / a2 + offset.v * s / b2;
    const double qc = offset.u * offset.u / a2 + offset.v * offset.v / b2 - 1.0;
    const double reach = (qb + std::sqrt(std::max(0.0, qb * qb - qa * qc))) / qa;
    sum += std::max(0.0, reach * reach - hole * hole);
  }
  return kPi * sum / kRays;
}

bool ToldFoul::holds(Point p) const {
  constexpr double kNear = 1e-3;
  if (band) {
    const double height = dot(p - band->at, band->normal);
    return height > band->low - kNear && height < band->high + kNear;
  }
  if (!ring) {
    return false;
  }
  const double s = station(ring->axis, p);
  const double length = ring->to - ring->from;
  const double share = length > 0.0 ? std::clamp((s - ring->from) / length, 0.0, 1.0) : 0.0;
  const auto at = [&](double from, double to) { return from + share * (to - from); };
  const double r = distance(ring->axis, p);
  return s > ring->from - kNear && s < ring->to + kNear &&
         r > at(ring->inner_from, ring->inner_to) - kNear &&
         r < at(ring->outer_from, ring->outer_to) + kNear;
}

ToldFoul radial_foul(const FoulScene& scene, const RadialSeat& seat) {
  const Product& product =
      scene.model.products[scene.model.occurrences[seat.shaft.occurrence].product];
  const Cylinder& journal = product.cylinders[seat.shaft.index];
  const Line axis = place_line(scene.to_a, seat.axis);
  const Line shaft = place_line(scene.to_a, placed(scene.model, seat.shaft, journal.axis));
  const double tightest = seat.worn ? seat.worn->least : seat.clearance;
  const bool pressed = tightest < -scene.settings.same_length_mm;
  const double bore =
      0.5 * seat.hole_diameter + (pressed ? most_overlap(scene.settings, seat.hole_diameter) : 0.0);
  const double radius = 0.5 * seat.shaft_diameter;
  Crescent crescent{axis, shaft, seat.from, seat.to, seat.tilt, {bore, bore}, {radius, radius}};
  ToldFoul told;
  // Of a worn pair the mean sizes tell no volume.
  told.certain = seat.coverage > 2.0 * kPi - kTurnSlack && !seat.worn && !crescent.in_two();
  const double spread = seat.worn ? seat.worn->most - seat.worn->least : 0.0;
  told.ring = Ring{axis,
                   seat.from,
                   seat.to,
                   0.5 * seat.hole_diameter - spread,
                   0.5 * seat.hole_diameter - spread,
                   bore + seat.fouls_by,
                   bore + seat.fouls_by};
  told.foul = {.volume = crescent.mean_area() * seat.engaged,
               .depth = seat.fouls_by,
               .length = seat.to - seat.from,
               .at = told.certain ? std::optional(crescent.inside()) : std::nullopt,
               .exact = told.certain,
               .cause = pressed ? "press fit off axis" : "off axis"};
  return told;
}

ToldFoul taper_foul(const FoulScene& scene, const TaperSeat& seat) {
  const auto cone = [&](const FeatureRef& f) -> const Cone& {
    return scene.model.products[scene.model.occurrences[f.occurrence].product].cones[f.index];
  };
  const Line axis = place_line(scene.to_a, seat.axis);
  const Line shaft = place_line(scene.to_a, placed(scene.model, seat.shaft, cone(seat.shaft).axis));
  const double half = 0.5 * seat.engaged;
  const bool pressed = is_pressed(seat, scene.settings);
  const double deep =
      pressed ? most_overlap(scene.settings, seat.diameter) / std::cos(seat.hole_half_angle) : 0.0;
  const double depth = pressed ? seat.fouls_by : -seat.least_gap;
  const auto bore = [&](double s) {
    return 0.5 * seat.diameter + s * std::tan(seat.hole_half_angle) + deep;
  };
  const auto radius = [&](double s) {
    return cone(seat.shaft).radius +
           station(shaft, at_station(axis, s)) * std::tan(seat.shaft_half_angle);
  };
  Crescent crescent{
      axis, shaft, -half, half, 0.0, {bore(-half), bore(half)}, {radius(-half), radius(half)}};
  ToldFoul told;
  told.ring = Ring{axis,
                   -half,
                   half,
                   bore(-half) - deep,
                   bore(half) - deep,
                   bore(-half) + 2.0 * depth,
                   bore(half) + 2.0 * depth};
  told.foul = {.volume = crescent.mean_area() * seat.engaged,
               .depth = depth,
               .length = seat.engaged,
               .at = crescent.inside(),
               .exact = false,
               .cause = pressed ? "taper off axis" : "off axis"};
  return told;
}

ToldFoul axial_foul(const FoulScene& scene, const AxialSeat& seat) {
  const PlacedPlane a = placed_plane(scene.model, seat.a);
  const PlacedPlane b = placed_plane(scene.model, seat.b);
  const auto points = seat_points(scene.seats, seat, a, b);
  const auto shared =
      std::ranges::find_if(points, [&](Point p) { return a.covers(p) && b.covers(p); });
  std::optional<Point> at;
  if (shared != points.end()) {
    const double height = dot(*shared - a.normal.at, a.normal.along);
    at = place_point(scene.to_a, *shared + (0.5 * seat.gap - height) * a.normal.along);
  }
  const auto widest = [](const Region& outline) {
    const Extent2 e = extent(outline);
    return std::max(e.high.u - e.low.u, e.high.v - e.low.v);
  };
  const Line axis = place_line(scene.to_a, seat.axis);
  ToldFoul told;
  told.band = Band{axis.at, axis.along, seat.gap, 0.0};
  told.foul = {.volume = seat.area * -seat.gap,
               .depth = -seat.gap,
               .length = std::min(widest(*a.outline), widest(*b.outline)),
               .at = at,
               .exact = true,
               .cause = "faces overlap"};
  return told;
}

}  // namespace spotblue::proof
