#pragma once
/// @file
/// One edge of a plane region: its points, its box, its distances and where two of them meet.
/// Coordinates in mm; a parameter t runs from 0 at `from` to 1 at `to`, evenly along the edge.

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

#include "spotblue/geometry/region.hpp"

namespace spotblue {

constexpr Point2 operator+(Point2 a, Point2 b) { return {a.u + b.u, a.v + b.v}; }
constexpr Point2 operator-(Point2 a, Point2 b) { return {a.u - b.u, a.v - b.v}; }
constexpr Point2 operator*(double s, Point2 a) { return {s * a.u, s * a.v}; }
constexpr double dot(Point2 a, Point2 b) { return a.u * b.u + a.v * b.v; }
constexpr double cross(Point2 a, Point2 b) { return a.u * b.v - a.v * b.u; }
inline double norm(Point2 a) { return std::sqrt(dot(a, a)); }

constexpr bool is_line(const Edge2& edge) { return edge.sweep == 0.0; }
bool is_full_circle(const Edge2& edge);
double edge_length(const Edge2& edge);
Point2 point_at(const Edge2& edge, double t);
/// The stretch of the edge from t0 to t1.
Edge2 stretch(const Edge2& edge, double t0, double t1);
Edge2 reversed(const Edge2& edge);
Extent2 edge_extent(const Edge2& edge);
/// Distances of the edge's points from p.
Reach edge_reach(const Edge2& edge, Point2 p);
double boundary_distance(const Region& region, Point2 p);
/// Where on the edge p lies when it is no further than the tolerance from it; exactly 0 or 1 within
/// the tolerance of an end.
std::optional<double> parameter_on(const Edge2& edge, Point2 p, double tolerance);
/// Points where the whole lines and circles that carry the edges meet, none when they run together
/// within the tolerance.
std::vector<Point2> carrier_crossings(const Edge2& a, const Edge2& b, double tolerance);

constexpr bool boxes_meet(const Extent2& a, const Extent2& b, double slack) {
  return a.low.u <= b.high.u + slack && b.low.u <= a.high.u + slack &&
         a.low.v <= b.high.v + slack && b.low.v <= a.high.v + slack;
}

constexpr Extent2 joined(const Extent2& a, const Extent2& b) {
  return {{std::min(a.low.u, b.low.u), std::min(a.low.v, b.low.v)},
          {std::max(a.high.u, b.high.u), std::max(a.high.v, b.high.v)}};
}

}  // namespace spotblue
