#include "geometry/plane/region_edge.hpp"

#include <limits>
#include <numbers>
#include <utility>

namespace spotblue {
namespace {

constexpr double kParallelEdges = 1e-15;  // sine: what is left of one in a double
constexpr double kTurnRounding = 1e-12;   // rad

constexpr double kTurn = 2.0 * std::numbers::pi;

Point2 turned(Point2 d, double angle) {
  const double c = std::cos(angle);
  const double s = std::sin(angle);
  return {c * d.u - s * d.v, s * d.u + c * d.v};
}

/// Parameter of the arc's point in direction d from its centre; outside 0..1 when the arc does not
/// get there.
double arc_parameter(const Edge2& arc, Point2 d) {
  const Point2 start = arc.from - arc.centre;
  double angle = std::atan2(cross(start, d), dot(start, d));
  if (arc.sweep > 0.0 && angle < 0.0) {
    angle += kTurn;
  } else if (arc.sweep < 0.0 && angle > 0.0) {
    angle -= kTurn;
  }
  return angle / arc.sweep;
}

/// Whether the arc has a point in direction d from its centre.
bool arc_reaches(const Edge2& arc, Point2 d) {
  if (is_full_circle(arc)) {
    return true;
  }
  Point2 first = arc.from - arc.centre;
  Point2 last = arc.to - arc.centre;
  if (arc.sweep < 0.0) {
    std::swap(first, last);
  }
  return std::abs(arc.sweep) <= std::numbers::pi ? cross(first, d) >= 0.0 && cross(d, last) >= 0.0
                                                 : cross(last, d) <= 0.0 || cross(d, first) <= 0.0;
}

double line_parameter(const Edge2& line, Point2 p) {
  const Point2 d = line.to - line.from;
  const double square = dot(d, d);
  return square > 0.0 ? dot(p - line.from, d) / square : 0.0;
}

std::vector<Point2> line_line(const Edge2& a, const Edge2& b) {
  const Point2 da = a.to - a.from;
  const Point2 db = b.to - b.from;
  const double sine = cross(da, db);
  if (std::abs(sine) <= kParallelEdges * norm(da) * norm(db)) {
    return {};
  }
  return {a.from + (cross(b.from - a.from, db) / sine) * da};
}

std::vector<Point2> line_circle(const Edge2& line, const Edge2& arc) {
  const Point2 d = line.to - line.from;
  const double length = norm(d);
  if (length == 0.0) {
    return {};
  }
  const Point2 along = (1.0 / length) * d;
  const Point2 foot = line.from + dot(arc.centre - line.from, along) * along;
  const double away = cross(along, arc.centre - line.from);
  const double square = (arc.radius - away) * (arc.radius + away);
  if (square < 0.0) {
    return {};
  }
  const double half = std::sqrt(square);
  return {foot + half * along, foot - half * along};
}

std::vector<Point2> circle_circle(const Edge2& a, const Edge2& b, double tolerance) {
  const Point2 between = b.centre - a.centre;
  const double d = norm(between);
  if (d + std::abs(a.radius - b.radius) <= tolerance || d == 0.0) {
    return {};
  }
  const double along = 0.5 * (d + (a.radius - b.radius) * (a.radius + b.radius) / d);
  const double square = (a.radius - along) * (a.radius + along);
  if (square < 0.0) {
    return {};
  }
  const Point2 axis = (1.0 / d) * between;
  const Point2 side = std::sqrt(square) * Point2{-axis.v, axis.u};
  const Point2 middle = a.centre + along * axis;
  return {middle + side, middle - side};
}

}  // namespace

bool is_full_circle(const Edge2& edge) { return std::abs(edge.sweep) >= kTurn - kTurnRounding; }

double edge_length(const Edge2& edge) {
  return is_line(edge) ? norm(edge.to - edge.from) : edge.radius * std::abs(edge.sweep);
}

Point2 point_at(const Edge2& edge, double t) {
  if (is_line(edge)) {
    return edge.from + t * (edge.to - edge.from);
  }
  return edge.centre + turned(edge.from - edge.centre, t * edge.sweep);
}

Edge2 stretch(const Edge2& edge, double t0, double t1) {
  return {t0 == 0.0 ? edge.from : point_at(edge, t0), t1 == 1.0 ? edge.to : point_at(edge, t1),
          (t1 - t0) * edge.sweep, edge.centre, edge.radius};
}

Edge2 reversed(const Edge2& edge) {
  return {edge.to, edge.from, is_line(edge) ? 0.0 : -edge.sweep, edge.centre, edge.radius};
}

Extent2 edge_extent(const Edge2& edge) {
  Extent2 box = joined({edge.from, edge.from}, {edge.to, edge.to});
  if (!is_line(edge)) {
    for (const Point2 d : {Point2{1, 0}, Point2{-1, 0}, Point2{0, 1}, Point2{0, -1}}) {
      if (arc_reaches(edge, d)) {
        const Point2 p = edge.centre + edge.radius * d;
        box = joined(box, {p, p});
      }
    }
  }
  return box;
}

Reach edge_reach(const Edge2& edge, Point2 p) {
  const double first = norm(edge.from - p);
  const double last = norm(edge.to - p);
  Reach result{std::min(first, last), std::max(first, last)};
  if (is_line(edge)) {
    const double t = line_parameter(edge, p);
    if (t > 0.0 && t < 1.0) {
      result.least = norm(point_at(edge, t) - p);
    }
    return result;
  }
  const Point2 d = p - edge.centre;
  const double away = norm(d);
  if (away == 0.0) {
    return {edge.radius, edge.radius};
  }
  if (arc_reaches(edge, d)) {
    result.least = std::abs(away - edge.radius);
  }
  if (arc_reaches(edge, -1.0 * d)) {
    result.greatest = away + edge.radius;
  }
  return result;
}

double boundary_distance(const Region& region, Point2 p) {
  double least = std::numeric_limits<double>::infinity();
  for (const Edge2& edge : region.edges) {
    least = std::min(least, edge_reach(edge, p).least);
  }
  return least;
}

std::optional<double> parameter_on(const Edge2& edge, Point2 p, double tolerance) {
  if (norm(p - edge.from) <= tolerance) {
    return 0.0;
  }
  if (norm(p - edge.to) <= tolerance) {
    return 1.0;
  }
  double t = 0.0;
  if (is_line(edge)) {
    t = line_parameter(edge, p);
    if (std::abs(cross(edge.to - edge.from, p - edge.from)) > tolerance * edge_length(edge)) {
      return std::nullopt;
    }
  } else {
    const Point2 d = p - edge.centre;
    if (std::abs(norm(d) - edge.radius) > tolerance) {
      return std::nullopt;
    }
    t = arc_parameter(edge, d);
  }
  if (t < 0.0 || t > 1.0) {
    return std::nullopt;
  }
  return t;
}

std::vector<Point2> carrier_crossings(const Edge2& a, const Edge2& b, double tolerance) {
  if (is_line(a) && is_line(b)) {
    return line_line(a, b);
  }
  if (is_line(a)) {
    return line_circle(a, b);
  }
  return is_line(b) ? line_circle(b, a) : circle_circle(a, b, tolerance);
}

}  // namespace spotblue
