#include "geometry/surfaces/surface_fit.hpp"

#include <Precision.hxx>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <math_Gauss.hxx>
#include <math_Jacobi.hxx>
#include <math_Matrix.hxx>
#include <math_Vector.hxx>
#include <numbers>

#include "geometry/model/tolerances.hpp"
#include "geometry/occt/occt_values.hpp"

namespace spotblue {
namespace {

constexpr double kSingular = 1e-14;  // a determinant of so little of its columns is none

constexpr double kSlope = 1.0;    // rad of a normal for each mm that a surface may lie off
constexpr double kSquare = 1e-9;  // spread of normals along the axis of an exact cylinder or cone
constexpr double kNearSquare = 1e-5;  // and of one that is only near
constexpr int kCoarse = 8;
constexpr int kFine = 40;
constexpr double kFlat = 1e-9;       // sine between the two parameters' directions
constexpr std::size_t kFewest = 16;  // samples left of a grid with poles and folds

struct Spread {
  Direction least;     // direction in which the vectors vary least
  double ratio = 1.0;  // least over middle eigenvalue
};

Spread spread_of(const std::vector<Point>& vectors) {
  math_Matrix m(1, 3, 1, 3, 0.0);
  for (const Point v : vectors) {
    const std::array<double, 3> c{v.x, v.y, v.z};
    for (int i = 1; i <= 3; ++i) {
      for (int j = 1; j <= 3; ++j) {
        m(i, j) += c[static_cast<std::size_t>(i - 1)] * c[static_cast<std::size_t>(j - 1)];
      }
    }
  }
  const math_Jacobi jacobi(m);
  if (!jacobi.IsDone()) {
    return {};
  }
  std::array<int, 3> order{1, 2, 3};
  std::sort(order.begin(), order.end(),
            [&](int a, int b) { return jacobi.Value(a) < jacobi.Value(b); });
  math_Vector v(1, 3);
  jacobi.Vector(order[0], v);
  const double middle = jacobi.Value(order[1]);
  return {unit({v(1), v(2), v(3)}), middle > 0.0 ? jacobi.Value(order[0]) / middle : 1.0};
}

// Solves the 3x3 system m x = r by Cramer's rule; nothing when it is singular.
std::optional<Point> solve(Point c0, Point c1, Point c2, Point r) {
  const double det = dot(c0, cross(c1, c2));
  if (std::abs(det) < kSingular * norm(c0) * norm(c1) * norm(c2)) {
    return std::nullopt;
  }
  return Point{dot(r, cross(c1, c2)) / det, dot(c0, cross(r, c2)) / det,
               dot(c0, cross(c1, r)) / det};
}

// The points do not lie on a line, where any plane and many a cylinder would do.
bool spread_over_a_surface(const std::vector<SurfaceSample>& samples) {
  constexpr double kThin = 1e-6;  // width over length
  const Point origin = samples.front().at;
  const auto far = std::max_element(samples.begin(), samples.end(),
                                    [&](const SurfaceSample& a, const SurfaceSample& b) {
                                      return norm(a.at - origin) < norm(b.at - origin);
                                    });
  const double length = norm(far->at - origin);
  if (!(length > 0.0)) {
    return false;
  }
  const Line line{origin, Direction((1.0 / length) * (far->at - origin))};
  return std::any_of(samples.begin(), samples.end(),
                     [&](const SurfaceSample& s) { return distance(line, s.at) > kThin * length; });
}

std::vector<SurfaceSample> grid_of(const BRepAdaptor_Surface& surface, int grid) {
  std::vector<SurfaceSample> samples;
  const Interval u = finite_stretch(surface.FirstUParameter(), surface.LastUParameter());
  const Interval v = finite_stretch(surface.FirstVParameter(), surface.LastVParameter());
  for (int i = 0; i < grid; ++i) {
    for (int j = 0; j < grid; ++j) {
      gp_Pnt at;
      gp_Vec du;
      gp_Vec dv;
      surface.D1(u.at((i + 0.5) / grid), v.at((j + 0.5) / grid), at, du, dv);
      const Point normal = cross(from_occt(du), from_occt(dv));
      if (norm(normal) > kFlat * norm(from_occt(du)) * norm(from_occt(dv)) &&
          std::isfinite(norm(normal))) {
        samples.push_back({from_occt(at), unit(normal)});
      }
    }
  }
  return samples;
}

double deviation_of(const FittedCylinder& cylinder, const std::vector<SurfaceSample>& samples) {
  double most = 0.0;
  for (const SurfaceSample& s : samples) {
    most = std::max(most, std::abs(distance(cylinder.axis, s.at) - cylinder.radius));
  }
  return most;
}

// By normals, whose spread along the axis is at most `spread_along`, and a circle about it.
std::optional<FittedCylinder> first_cylinder(const std::vector<SurfaceSample>& samples,
                                             double spread_along) {
  std::vector<Point> normals;
  normals.reserve(samples.size());
  for (const SurfaceSample& s : samples) {
    normals.push_back(s.normal);
  }
  const Spread spread = spread_of(normals);
  if (spread.ratio > spread_along) {
    return std::nullopt;
  }
  const Direction along = spread.least;
  const Direction e1 = any_square(along);
  const Direction e2 = third(along, e1);
  // Circle x2 + y2 + D x + E y + F = 0 by least squares about the first point, where it is well
  // set.
  const Point origin = samples.front().at;
  Point c0;
  Point c1;
  Point c2;
  Point r;
  for (const SurfaceSample& s : samples) {
    const double x = dot(s.at - origin, e1);
    const double y = dot(s.at - origin, e2);
    const double q = -(x * x + y * y);
    c0 = c0 + Point{x * x, x * y, x};
    c1 = c1 + Point{x * y, y * y, y};
    c2 = c2 + Point{x, y, 1.0};
    r = r + Point{x * q, y * q, q};
  }
  const auto def = solve(c0, c1, c2, r);
  if (!def) {
    return std::nullopt;
  }
  const double x = -0.5 * def->x;
  const double y = -0.5 * def->y;
  const double square = x * x + y * y - def->z;
  if (!(square > 0.0)) {
    return std::nullopt;
  }
  FittedCylinder cylinder{{origin + x * e1 + y * e2, along}, std::sqrt(square), 0.0};
  cylinder.deviation = deviation_of(cylinder, samples);
  return cylinder;
}

// One step of Gauss and Newton on the distances: the axis turned and moved, the radius changed.
bool improve(FittedCylinder& cylinder, const std::vector<SurfaceSample>& samples) {
  const Direction along = cylinder.axis.along;
  const Direction e1 = any_square(along);
  const Direction e2 = third(along, e1);
  math_Matrix m(1, 5, 1, 5, 0.0);
  math_Vector r(1, 5, 0.0);
  for (const SurfaceSample& s : samples) {
    const double z = station(cylinder.axis, s.at);
    const Point out = s.at - at_station(cylinder.axis, z);
    const double from_axis = norm(out);
    if (!(from_axis > 0.0)) {
      return false;
    }
    const double c1 = dot(out, e1) / from_axis;
    const double c2 = dot(out, e2) / from_axis;
    const std::array<double, 5> row{-c1, -c2, -c1 * z, -c2 * z, -1.0};
    const double off = from_axis - cylinder.radius;
    for (int i = 1; i <= 5; ++i) {
      const double a = row[static_cast<std::size_t>(i - 1)];
      r(i) -= a * off;
      for (int j = 1; j <= 5; ++j) {
        m(i, j) += a * row[static_cast<std::size_t>(j - 1)];
      }
    }
  }
  const math_Gauss solver(m, kSingular);
  if (!solver.IsDone()) {
    return false;
  }
  math_Vector x(1, 5);
  solver.Solve(r, x);
  cylinder.axis.at = cylinder.axis.at + x(1) * e1 + x(2) * e2;
  cylinder.axis.along = unit(along + x(3) * e1 + x(4) * e2);
  cylinder.radius += x(5);
  return std::isfinite(cylinder.radius) && cylinder.radius > 0.0;
}

// The surface turns so far about the axis, and reaches so far along it, that neither a plane nor
// another radius nor a barrel would lie as near.
bool is_well_told(const FittedCylinder& cylinder, const std::vector<SurfaceSample>& samples) {
  constexpr double kRise = 100.0;  // of the arc over its chord, in deviations
  constexpr double kReach = 1.0;   // mm along the axis
  double low = std::numeric_limits<double>::infinity();
  double high = -low;
  double least_cosine = 1.0;
  const auto out = [&](Point p) {
    return p - at_station(cylinder.axis, station(cylinder.axis, p));
  };
  const Point first = out(samples.front().at);
  for (const SurfaceSample& s : samples) {
    const double z = station(cylinder.axis, s.at);
    low = std::min(low, z);
    high = std::max(high, z);
    const Point here = out(s.at);
    least_cosine = std::min(least_cosine, dot(here, first) / (norm(here) * norm(first)));
  }
  const double half_turn = 0.5 * std::acos(std::clamp(least_cosine, -1.0, 1.0));
  const double rise = cylinder.radius * (1.0 - std::cos(half_turn));
  return high - low > kReach && rise > kRise * cylinder.deviation;
}

}  // namespace

Interval finite_stretch(double from, double to) {
  constexpr double kPiece = 100.0;
  const bool begins = !Precision::IsInfinite(from);
  const bool ends = !Precision::IsInfinite(to);
  if (begins && ends) {
    return {from, to};
  }
  return begins ? Interval{from, from + kPiece}
         : ends ? Interval{to - kPiece, to}
                : Interval{-kPiece, kPiece};
}

std::vector<SurfaceSample> sample_surface(const BRepAdaptor_Surface& surface) {
  std::vector<SurfaceSample> samples = grid_of(surface, kCoarse);
  if (samples.size() < kFewest || !spread_over_a_surface(samples)) {
    samples.clear();
  }
  return samples;
}

std::optional<FittedPlane> fit_plane(const std::vector<SurfaceSample>& samples, double within) {
  FittedPlane plane{{samples.front().at, samples.front().normal}, 0.0};
  for (const SurfaceSample& s : samples) {
    plane.deviation =
        std::max(plane.deviation, std::abs(dot(s.at - plane.line.at, plane.line.along)));
    if (plane.deviation > within || norm(cross(s.normal, plane.line.along)) > kSlope * within) {
      return std::nullopt;
    }
  }
  return plane;
}

std::optional<FittedCylinder> fit_cylinder(const std::vector<SurfaceSample>& samples,
                                           double within) {
  const auto cylinder = first_cylinder(samples, kSquare);
  return cylinder && cylinder->deviation <= within ? cylinder : std::nullopt;
}

std::optional<FittedCylinder> fit_near_cylinder(const BRepAdaptor_Surface& surface,
                                                const std::vector<SurfaceSample>& samples,
                                                double within) {
  constexpr int kSteps = 4;
  auto cylinder = first_cylinder(samples, kNearSquare);
  // From farther off than this no few steps lead to it.
  if (!cylinder || cylinder->deviation > 100.0 * within) {
    return std::nullopt;
  }
  const std::vector<SurfaceSample> fine = grid_of(surface, kFine);
  for (int step = 0; step < kSteps; ++step) {
    if (!improve(*cylinder, fine)) {
      return std::nullopt;
    }
  }
  cylinder->deviation = deviation_of(*cylinder, fine);
  return cylinder->deviation <= within && is_well_told(*cylinder, fine) ? cylinder : std::nullopt;
}

std::optional<FittedCylinder> fit_rough_cylinder(const std::vector<SurfaceSample>& samples) {
  constexpr double kRoughSquare = 2e-3;  // normals that lean a degree or two off square
  constexpr int kSteps = 8;
  auto cylinder = first_cylinder(samples, kRoughSquare);
  for (int step = 0; cylinder && step < kSteps; ++step) {
    if (!improve(*cylinder, samples)) {
      return std::nullopt;
    }
  }
  if (cylinder) {
    cylinder->deviation = deviation_of(*cylinder, samples);
  }
  return cylinder && is_well_told(*cylinder, samples) ? cylinder : std::nullopt;
}

namespace {

// Every tangent plane of a cone passes through its apex: n . (apex - p) = 0.
std::optional<Point> apex_of(const std::vector<SurfaceSample>& samples) {
  const Point origin = samples.front().at;
  Point c0;
  Point c1;
  Point c2;
  Point r;
  for (const SurfaceSample& s : samples) {
    const Point n = s.normal;
    c0 = c0 + n.x * n;
    c1 = c1 + n.y * n;
    c2 = c2 + n.z * n;
    r = r + dot(n, s.at - origin) * n;
  }
  const auto apex = solve(c0, c1, c2, r);
  return apex ? std::optional(origin + *apex) : std::nullopt;
}

}  // namespace

std::optional<FittedCone> fit_cone(const std::vector<SurfaceSample>& samples, double within) {
  // The normals of a cone all make one angle with its axis, so their differences are square to it.
  Point mean;
  for (const SurfaceSample& s : samples) {
    mean = mean + (1.0 / static_cast<double>(samples.size())) * s.normal;
  }
  std::vector<Point> differences;
  differences.reserve(samples.size());
  for (const SurfaceSample& s : samples) {
    differences.push_back(s.normal - mean);
  }
  const Spread spread = spread_of(differences);
  if (spread.ratio > kSquare) {
    return std::nullopt;
  }
  const auto apex = apex_of(samples);
  if (!apex) {
    return std::nullopt;
  }
  const Point origin = samples.front().at;
  Line axis{*apex, spread.least};
  if (station(axis, origin) < 0.0) {
    axis.along = -axis.along;
  }
  double deviation = 0.0;
  const double height = station(axis, origin);
  const double half_angle = std::atan2(distance(axis, origin), height);
  if (!(half_angle > kTurnSlack) || half_angle > std::numbers::pi / 2.0 - kTurnSlack) {
    return std::nullopt;
  }
  for (const SurfaceSample& s : samples) {
    const double h = station(axis, s.at);
    const double off = distance(axis, s.at) * std::cos(half_angle) - h * std::sin(half_angle);
    deviation = std::max(deviation, std::abs(off));
    if (h < 0.0 || deviation > within) {
      return std::nullopt;
    }
  }
  return FittedCone{axis, 0.0, half_angle, deviation};
}

}  // namespace spotblue
