#include "geometry/surface_fit.hpp"

#include <Precision.hxx>
#include <algorithm>
#include <array>
#include <cmath>
#include <math_Jacobi.hxx>
#include <math_Matrix.hxx>
#include <math_Vector.hxx>
#include <numbers>

#include "geometry/occt_values.hpp"

namespace spotblue {
namespace {

// Farther off than this and the surface is not the plane, cylinder or cone: a hundredth of the
// 1e-4 mm that is promised for splines.
constexpr double kFit = 1e-6;
constexpr double kSquare = 1e-9;  // rad: normals of an exact cylinder are square to its axis
constexpr int kGrid = 8;
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
  if (std::abs(det) < 1e-14 * norm(c0) * norm(c1) * norm(c2)) {
    return std::nullopt;
  }
  return Point{dot(r, cross(c1, c2)) / det, dot(c0, cross(r, c2)) / det,
               dot(c0, cross(c1, r)) / det};
}

// A stretch of the surface's parameter; one without end, as an extrusion's length, is the same all
// the way, and a piece of it serves.
struct Stretch {
  double from, to;
  [[nodiscard]] double at(double share) const { return from + share * (to - from); }
};

Stretch finite(double from, double to) {
  constexpr double kPiece = 100.0;
  const bool begins = !Precision::IsInfinite(from);
  const bool ends = !Precision::IsInfinite(to);
  if (begins && ends) {
    return {from, to};
  }
  return begins ? Stretch{from, from + kPiece}
         : ends ? Stretch{to - kPiece, to}
                : Stretch{-kPiece, kPiece};
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
  const Line line{origin, (1.0 / length) * (far->at - origin)};
  return std::any_of(samples.begin(), samples.end(),
                     [&](const SurfaceSample& s) { return distance(line, s.at) > kThin * length; });
}

}  // namespace

std::vector<SurfaceSample> sample_surface(const BRepAdaptor_Surface& surface) {
  std::vector<SurfaceSample> samples;
  const Stretch u = finite(surface.FirstUParameter(), surface.LastUParameter());
  const Stretch v = finite(surface.FirstVParameter(), surface.LastVParameter());
  for (int i = 0; i < kGrid; ++i) {
    for (int j = 0; j < kGrid; ++j) {
      gp_Pnt at;
      gp_Vec du;
      gp_Vec dv;
      surface.D1(u.at((i + 0.5) / kGrid), v.at((j + 0.5) / kGrid), at, du, dv);
      const Point normal = cross(from_occt(du), from_occt(dv));
      if (norm(normal) > kFlat * norm(from_occt(du)) * norm(from_occt(dv)) &&
          std::isfinite(norm(normal))) {
        samples.push_back({from_occt(at), unit(normal)});
      }
    }
  }
  if (samples.size() < kFewest || !spread_over_a_surface(samples)) {
    samples.clear();
  }
  return samples;
}

std::optional<Line> fit_plane(const std::vector<SurfaceSample>& samples) {
  const Line plane{samples.front().at, samples.front().normal};
  for (const SurfaceSample& s : samples) {
    if (std::abs(dot(s.at - plane.at, plane.along)) > kFit ||
        norm(cross(s.normal, plane.along)) > 1e-6) {
      return std::nullopt;
    }
  }
  return plane;
}

std::optional<FittedCylinder> fit_cylinder(const std::vector<SurfaceSample>& samples) {
  std::vector<Point> normals;
  for (const SurfaceSample& s : samples) {
    normals.push_back(s.normal);
  }
  const Spread spread = spread_of(normals);
  if (spread.ratio > kSquare) {
    return std::nullopt;
  }
  const Direction along = spread.least;
  const Direction e1 = any_square(along);
  const Direction e2 = cross(along, e1);
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
  const FittedCylinder cylinder{{origin + x * e1 + y * e2, along}, std::sqrt(square)};
  for (const SurfaceSample& s : samples) {
    if (std::abs(distance(cylinder.axis, s.at) - cylinder.radius) > kFit) {
      return std::nullopt;
    }
  }
  return cylinder;
}

std::optional<FittedCone> fit_cone(const std::vector<SurfaceSample>& samples) {
  // The normals of a cone all make one angle with its axis, so their differences are square to it.
  Point mean;
  for (const SurfaceSample& s : samples) {
    mean = mean + (1.0 / static_cast<double>(samples.size())) * s.normal;
  }
  std::vector<Point> differences;
  for (const SurfaceSample& s : samples) {
    differences.push_back(s.normal - mean);
  }
  const Spread spread = spread_of(differences);
  if (spread.ratio > kSquare) {
    return std::nullopt;
  }
  // Every tangent plane passes through the apex: n . (apex - p) = 0.
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
  if (!apex) {
    return std::nullopt;
  }
  Line axis{origin + *apex, spread.least};
  if (station(axis, origin) < 0.0) {
    axis.along = -axis.along;
  }
  const double height = station(axis, origin);
  const double half_angle = std::atan2(distance(axis, origin), height);
  if (!(half_angle > 1e-6) || half_angle > std::numbers::pi / 2.0 - 1e-6) {
    return std::nullopt;
  }
  for (const SurfaceSample& s : samples) {
    const double h = station(axis, s.at);
    const double off = distance(axis, s.at) * std::cos(half_angle) - h * std::sin(half_angle);
    if (h < 0.0 || std::abs(off) > kFit) {
      return std::nullopt;
    }
  }
  return FittedCone{axis, 0.0, half_angle};
}

}  // namespace spotblue
