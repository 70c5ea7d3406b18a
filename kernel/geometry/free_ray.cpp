#include "geometry/free_ray.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace spotblue::proof {
namespace {

/// A ray that passes a face's edge nearer than this may meet it.
constexpr double kMargin = 1e-6;

bool misses(const Box& box, Point start, Direction d) {
  double enter = 0.0;
  double leave = std::numeric_limits<double>::infinity();
  const std::array<std::array<double, 4>, 3> axes{{{start.x, d.x, box.low.x, box.high.x},
                                                   {start.y, d.y, box.low.y, box.high.y},
                                                   {start.z, d.z, box.low.z, box.high.z}}};
  for (const auto& [from, rate, low, high] : axes) {
    if (std::abs(rate) < 1e-12) {
      if (from < low - kMargin || from > high + kMargin) {
        return true;
      }
      continue;
    }
    const double one = (low - kMargin - from) / rate;
    const double other = (high + kMargin - from) / rate;
    enter = std::max(enter, std::min(one, other));
    leave = std::min(leave, std::max(one, other));
  }
  return enter > leave;
}

double segment_distance(Point2 from, Point2 to, Point2 p) {
  const double du = to.u - from.u;
  const double dv = to.v - from.v;
  const double square = du * du + dv * dv;
  const double along = (p.u - from.u) * du + (p.v - from.v) * dv;
  const double share = square > 0.0 ? std::clamp(along / square, 0.0, 1.0) : 0.0;
  return std::hypot(p.u - from.u - share * du, p.v - from.v - share * dv);
}

/// Distance from the edge, or less: an arc counts as its whole circle.
double edge_distance(const Edge2& edge, Point2 p) {
  return edge.sweep == 0.0
             ? segment_distance(edge.from, edge.to, p)
             : std::abs(std::hypot(p.u - edge.centre.u, p.v - edge.centre.v) - edge.radius);
}

bool misses(const Flat& flat, Point start, Direction d) {
  const double rate = dot(d, flat.normal);
  const double height = dot(flat.at - start, flat.normal);
  if (std::abs(rate) < 1e-9) {
    return std::abs(height) > kMargin + 1e-9 * norm(flat.at - start);
  }
  const double at = height / rate;
  if (at < 0.0) {
    return true;
  }
  const Point q = start + at * d - flat.at;
  const Point2 p{dot(q, flat.u), dot(q, flat.v)};
  return !contains(*flat.outline, p) &&
         std::ranges::all_of(flat.outline->edges, [&](const Edge2& edge) {
           return edge_distance(edge, p) > kMargin + flat.slack;
         });
}

bool misses(const Turned& t, Point start, Direction d) {
  if (std::abs(t.radius_from - t.radius_to) > 0.0) {
    return false;
  }
  const auto square = [&](Point p) { return p - dot(p, t.axis.along) * t.axis.along; };
  const Point s = square(start - t.axis.at);
  const Point v = square(d);
  const double a = dot(v, v);
  const double b = dot(s, v);
  const double c = dot(s, s) - t.radius_from * t.radius_from;
  const double root = b * b - a * c;
  if (a < 1e-12 || root < 1e-9 * std::max(a, b * b)) {
    return false;  // along the axis or grazing: the box had its say
  }
  const double margin = kMargin / std::max(t.radius_from, kMargin);
  return std::ranges::all_of(std::array{-1.0, 1.0}, [&](double sign) {
    const double at = (-b + sign * std::sqrt(root)) / a;
    const Point p = start + at * d - t.axis.at;
    const double along = dot(p, t.axis.along);
    const double angle = std::atan2(dot(p, t.y), dot(p, t.x));
    const bool angles = in_arcs(angle, t.arcs) || in_arcs(angle - margin, t.arcs) ||
                        in_arcs(angle + margin, t.arcs);
    return at < 0.0 || along < t.from - kMargin || along > t.to + kMargin || !angles;
  });
}

bool misses(const OtherFace&, Point, Direction) { return false; }

const Box& box_of(const Turned& t) { return t.box; }
const Box& box_of(const Flat& f) { return f.box; }
const Box& box_of(const OtherFace& o) { return o.box; }

}  // namespace

bool is_free(const FaceBounds& part, Point start, Direction d) {
  const auto free = [&](const auto& face) {
    return misses(box_of(face), start, d) || misses(face, start, d);
  };
  return std::ranges::all_of(part.patches, free) && std::ranges::all_of(part.flats, free) &&
         std::ranges::all_of(part.others, free);
}

}  // namespace spotblue::proof
