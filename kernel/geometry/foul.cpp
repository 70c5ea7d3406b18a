#include "geometry/foul.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

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
          place_direction(frame, cross(plane.normal, plane.u)), &plane.outline};
}

/// Points that may lie in what both outlines cover, likeliest first.
std::vector<Point> face_points(const Seats& seats, const AxialSeat& seat, const PlacedPlane& a,
                               const PlacedPlane& b) {
  constexpr int kAngles = 32;
  constexpr std::size_t kCorners = 24;
  std::vector<Point> points;
  if (seat.centre_line < seats.centre_lines.size()) {
    const Line& line = seats.centre_lines[seat.centre_line].line;
    const Point foot = line.at + dot(a.normal.at - line.at, line.along) * line.along;
    const Direction x = any_square(line.along);
    const Direction y = cross(line.along, x);
    for (int i = 0; i < kAngles; ++i) {
      const double angle = 2.0 * kPi * i / kAngles;
      const double radius = 0.25 * (seat.inner + seat.outer);
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

Clash radial_foul(const Model& model, const RadialSeat& seat) {
  const Product& product = model.products[model.occurrences[seat.shaft.occurrence].product];
  const Line shaft = placed(model, seat.shaft, product.cylinders[seat.shaft.index].axis);
  const double hole_radius = 0.5 * seat.hole_diameter;
  const double shaft_radius = 0.5 * seat.shaft_diameter;
  const double length = seat.to - seat.from;
  double mean = 0.0;
  double deepest = 0.5 * (seat.from + seat.to);
  const auto offset = [&](double s) { return norm(offset_at(seat.axis, shaft, s)); };
  const Point slope = shaft.along - dot(shaft.along, seat.axis.along) * seat.axis.along;
  const bool leans = norm(slope) > 1e-12;
  const Direction lean = leans ? unit(slope) : any_square(seat.axis.along);
  const Direction across_lean = cross(seat.axis.along, lean);
  const auto area_at = [&](double s) {
    const Point off = offset_at(seat.axis, shaft, s);
    return leans ? leaning_area(hole_radius, shaft_radius, seat.tilt,
                                {dot(off, lean), dot(off, across_lean)})
                 : crescent_area(hole_radius, shaft_radius, norm(off));
  };
  for (int i = 0; i < kPieces; ++i) {
    for (const Knot& knot : kGauss) {
      const double s = seat.from + length * (i + knot.at) / kPieces;
      mean += knot.weight / kPieces * area_at(s);
    }
  }
  for (const double s : {seat.from, seat.to}) {
    deepest = offset(s) > offset(deepest) + 1e-9 ? s : deepest;
  }
  // A little inside the engaged stretch, so that the point is not on an end face.
  const double at = std::clamp(deepest, seat.from + 0.01 * length, seat.to - 0.01 * length);
  const Point across = offset_at(seat.axis, shaft, at);
  const double reach = 0.5 * (hole_radius + std::max(hole_radius, norm(across) + shaft_radius));
  const Direction out = norm(across) > 0.0 ? unit(across) : any_square(seat.axis.along);
  return {.volume = mean * seat.engaged,
          .depth = -seat.least_gap,
          .at = at_station(seat.axis, at) + reach * out,
          .exact = true,
          .cause = "off axis"};
}

Clash axial_foul(const Model& model, const Seats& seats, const AxialSeat& seat) {
  const PlacedPlane a = placed_plane(model, seat.a);
  const PlacedPlane b = placed_plane(model, seat.b);
  const auto points = face_points(seats, seat, a, b);
  const auto shared =
      std::ranges::find_if(points, [&](Point p) { return a.covers(p) && b.covers(p); });
  const Point on = shared != points.end() ? *shared : seat.axis.at;
  const double height = dot(on - a.normal.at, a.normal.along);
  return {.volume = seat.area * -seat.gap,
          .depth = -seat.gap,
          .at = on + (0.5 * seat.gap - height) * a.normal.along,
          .exact = true,
          .cause = "faces overlap"};
}

}  // namespace spotblue::proof
