#include "geometry/faces/plane_outline.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <numbers>
#include <optional>
#include <unordered_map>
#include <vector>

#include "geometry/model/plane_map.hpp"
#include "geometry/model/tolerances.hpp"

namespace spotblue {
namespace {

constexpr double kCircleInPlane = 1e-7;  // sine between the normals

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
  if (std::abs(twice_area) <= kSameShare * chord * chord) {
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

bool runs_back(const Edge2& a, const Edge2& b) {
  return same(a.from, b.to) && same(a.to, b.from) && std::abs(a.sweep + b.sweep) < kNoTurn &&
         (a.sweep == 0.0 || same(a.centre, b.centre));
}

// Edges by where their middle lies, in cells far wider than two ends may differ.
class OpenOutline {
 public:
  void add(const std::vector<Edge2>& edges, std::size_t i) {
    cells_[key(cell(edges[i].from.u + edges[i].to.u), cell(edges[i].from.v + edges[i].to.v))]
        .push_back(i);
  }
  // The first that runs back on edge i, no longer open.
  std::optional<std::size_t> take_back(const std::vector<Edge2>& edges, std::size_t i) {
    const std::int64_t u = cell(edges[i].from.u + edges[i].to.u);
    const std::int64_t v = cell(edges[i].from.v + edges[i].to.v);
    for (std::int64_t du = -1; du <= 1; ++du) {
      for (std::int64_t dv = -1; dv <= 1; ++dv) {
        const auto found = cells_.find(key(u + du, v + dv));
        if (found == cells_.end()) {
          continue;
        }
        auto& here = found->second;
        const auto back = std::find_if(
            here.begin(), here.end(), [&](std::size_t j) { return runs_back(edges[i], edges[j]); });
        if (back != here.end()) {
          const std::size_t taken = *back;
          here.erase(back);
          return taken;
        }
      }
    }
    return std::nullopt;
  }

 private:
  static std::int64_t cell(double doubled) {
    constexpr double kCell = 1e-3;  // mm
    return std::llround(0.5 * doubled / kCell);
  }
  static std::uint64_t key(std::int64_t u, std::int64_t v) {
    return static_cast<std::uint64_t>(u) * 0x9E3779B97F4A7C15ULL + static_cast<std::uint64_t>(v);
  }
  std::unordered_map<std::uint64_t, std::vector<std::size_t>> cells_;
};

}  // namespace

void add_outline(Plane& plane, std::span<const EdgeCurve> edges) {
  for (const EdgeCurve& edge : edges) {
    const Point2 from = in_plane(plane, edge.from);
    Point2 to = in_plane(plane, edge.to);
    if (edge.kind == EdgeCurve::Kind::line) {
      plane.outline.edges.push_back(straight(from, to));
      continue;
    }
    if (edge.kind == EdgeCurve::Kind::circle &&
        norm(cross(edge.axis, plane.normal)) < kCircleInPlane) {
      const bool with = dot(edge.axis, plane.normal) > 0.0;
      if (edge.sweep > 2.0 * std::numbers::pi - kNoTurn) {
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
  OpenOutline open;
  std::vector<bool> gone(outline.edges.size(), false);
  for (std::size_t i = 0; i < outline.edges.size(); ++i) {
    if (const auto back = open.take_back(outline.edges, i)) {
      gone[i] = gone[*back] = true;
    } else {
      open.add(outline.edges, i);
    }
  }
  std::size_t kept = 0;
  for (std::size_t i = 0; i < outline.edges.size(); ++i) {
    if (!gone[i]) {
      outline.edges[kept++] = outline.edges[i];
    }
  }
  outline.edges.resize(kept);
}

}  // namespace spotblue
