#include "spotblue/geometry/region.hpp"

#include <limits>
#include <numbers>

#include "geometry/plane/region_edge.hpp"

namespace spotblue {
namespace {

/// Height above the ray along which crossings are counted. The ray leans, so that no outline drawn
/// along the axes has an edge or a row of vertices on it: ends of edges that miss one another by a
/// rounding would let it through.
constexpr double height(Point2 p) { return p.v + 0.2718281828459045 * p.u; }

/// Left of the line through the edge's ends. On a level chord at the point's own height the winding
/// rule takes the point to be just above, so this must as well.
bool is_left_of_chord(const Edge2& edge, Point2 p) {
  const double side = cross(edge.to - edge.from, p - edge.from);
  return side > 0.0 ||
         (side == 0.0 && height(edge.from) == height(edge.to) && edge.to.u > edge.from.u);
}

/// What one edge adds to the winding number of its loop about p: its chord's crossing of the ray
/// and the circular segment between chord and arc. Both ask the one question "left of the chord?",
/// so that a point near the chord, which is no boundary, can not fall between the two.
int winding(const Edge2& edge, Point2 p) {
  const double level = height(p);
  const double from = height(edge.from);
  const double to = height(edge.to);
  const bool rises = from <= level && level < to;
  const bool falls = to <= level && level < from;
  if (is_line(edge)) {
    if (!rises && !falls) {
      return 0;
    }
    return is_left_of_chord(edge, p) ? (rises ? 1 : 0) : (falls ? -1 : 0);
  }
  const Point2 d = p - edge.centre;
  const bool in_circle = dot(d, d) < edge.radius * edge.radius;
  if (is_full_circle(edge)) {
    return in_circle ? (edge.sweep > 0.0 ? 1 : -1) : 0;
  }
  if (!rises && !falls && !in_circle) {
    return 0;
  }
  const bool left = is_left_of_chord(edge, p);
  int turns = left ? (rises ? 1 : 0) : (falls ? -1 : 0);
  if (in_circle && left == (edge.sweep < 0.0)) {
    turns += edge.sweep > 0.0 ? 1 : -1;
  }
  return turns;
}

}  // namespace

bool is_empty(const Region& region) { return region.edges.empty(); }

double area(const Region& region) {
  if (region.edges.empty()) {
    return 0.0;
  }
  const Point2 origin = region.edges.front().from;
  double sum = 0.0;
  for (const Edge2& edge : region.edges) {
    if (!is_full_circle(edge)) {
      sum += 0.5 * cross(edge.from - origin, edge.to - origin);
    }
    if (!is_line(edge)) {
      const double excess = is_full_circle(edge) ? edge.sweep : edge.sweep - std::sin(edge.sweep);
      sum += 0.5 * edge.radius * edge.radius * excess;
    }
  }
  return sum;
}

Extent2 extent(const Region& region) {
  if (region.edges.empty()) {
    return {};
  }
  Extent2 box = edge_extent(region.edges.front());
  for (const Edge2& edge : region.edges) {
    box = joined(box, edge_extent(edge));
  }
  return box;
}

bool contains(const Region& region, Point2 p) {
  int turns = 0;
  for (const Edge2& edge : region.edges) {
    turns += winding(edge, p);
  }
  return turns > 0;
}

Reach reach(const Region& region, Point2 from) {
  if (region.edges.empty()) {
    return {};
  }
  Reach result{std::numeric_limits<double>::infinity(), 0.0};
  for (const Edge2& edge : region.edges) {
    const Reach one = edge_reach(edge, from);
    result = {std::min(result.least, one.least), std::max(result.greatest, one.greatest)};
  }
  if (contains(region, from)) {
    result.least = 0.0;
  }
  return result;
}

Region mapped(const Region& region, const PlaneMap& map) {
  const auto moved = [&map](Point2 p) {
    return map.origin + Point2{map.uu * p.u + map.uv * p.v, map.vu * p.u + map.vv * p.v};
  };
  const bool mirrors = map.uu * map.vv - map.uv * map.vu < 0.0;
  Region result{{}, region.exact};
  result.edges.reserve(region.edges.size());
  for (const Edge2& edge : region.edges) {
    Edge2 image{moved(edge.from), moved(edge.to), edge.sweep, moved(edge.centre), edge.radius};
    if (mirrors) {
      // The mirror turns the sweep round and so does running the edge the other way.
      std::swap(image.from, image.to);
    }
    result.edges.push_back(image);
  }
  return result;
}

Region disc(Point2 centre, double radius) {
  const Point2 seam = centre + Point2{radius, 0.0};
  return {{{seam, seam, 2.0 * std::numbers::pi, centre, radius}}, true};
}

}  // namespace spotblue
