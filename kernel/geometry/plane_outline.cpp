#include "geometry/plane_outline.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/plane_map.hpp"

namespace spotblue {
namespace {

constexpr double kSameCorner = 1e-7;  // mm
constexpr int kPieces = 48;           // arcs through three points that stand for one free-form edge

bool same(Point2 a, Point2 b) {
  return std::abs(a.u - b.u) < kSameCorner && std::abs(a.v - b.v) < kSameCorner;
}

Edge2 straight(Point2 from, Point2 to) { return {from, to, 0.0, {}, 0.0}; }

// The arc through three points, or the chord where they are as good as straight.
Edge2 arc_through(Point2 a, Point2 m, Point2 b) {
  const double mu = m.u - a.u;
  const double mv = m.v - a.v;
  const double bu = b.u - a.u;
  const double bv = b.v - a.v;
  const double twice_area = mu * bv - mv * bu;
  const double chord = std::hypot(bu, bv);
  if (std::abs(twice_area) <= 1e-9 * chord * chord) {
    return straight(a, b);
  }
  const double mm = mu * mu + mv * mv;
  const double bb = bu * bu + bv * bv;
  const double cu = (bv * mm - mv * bb) / (2.0 * twice_area);
  const double cv = (mu * bb - bu * mm) / (2.0 * twice_area);
  const double radius = std::hypot(cu, cv);
  const double half = std::asin(std::min(1.0, chord / (2.0 * radius)));
  // Points in the order a, m, b turn counter-clockwise when the triangle's area is positive.
  return {a, b, twice_area > 0.0 ? 2.0 * half : -2.0 * half, {a.u + cu, a.v + cv}, radius};
}

}  // namespace

void add_outline(Plane& plane, std::span<const EdgeCurve> edges) {
  for (const EdgeCurve& edge : edges) {
    const Point2 from = in_plane(plane, edge.from);
    Point2 to = in_plane(plane, edge.to);
    if (edge.kind == EdgeCurve::Kind::line) {
      plane.outline.edges.push_back(straight(from, to));
      continue;
    }
    if (edge.kind == EdgeCurve::Kind::circle && norm(cross(edge.axis, plane.normal)) < 1e-7) {
      const bool with = dot(edge.axis, plane.normal) > 0.0;
      if (edge.sweep > 2.0 * std::numbers::pi - 1e-9) {
        to = from;
      }
      plane.outline.edges.push_back(
          {from, to, with ? edge.sweep : -edge.sweep, in_plane(plane, edge.centre), edge.radius});
      continue;
    }
    plane.outline.exact = false;
    Point2 a = from;
    for (int i = 0; i < kPieces; ++i) {
      const Point2 m = in_plane(plane, point_along(edge, (i + 0.5) / kPieces).at);
      const Point2 b =
          i + 1 == kPieces ? to : in_plane(plane, point_along(edge, (i + 1.0) / kPieces).at);
      plane.outline.edges.push_back(arc_through(a, m, b));
      a = b;
    }
  }
}

void drop_seams(Region& outline) {
  auto& edges = outline.edges;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    for (std::size_t j = i + 1; j < edges.size(); ++j) {
      const bool back = same(edges[i].from, edges[j].to) && same(edges[i].to, edges[j].from) &&
                        std::abs(edges[i].sweep + edges[j].sweep) < 1e-9 &&
                        (edges[i].sweep == 0.0 || same(edges[i].centre, edges[j].centre));
      if (back) {
        edges.erase(edges.begin() + static_cast<std::ptrdiff_t>(j));
        edges.erase(edges.begin() + static_cast<std::ptrdiff_t>(i));
        --i;
        break;
      }
    }
  }
}

}  // namespace spotblue
