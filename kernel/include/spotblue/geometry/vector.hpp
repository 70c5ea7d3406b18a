#pragma once
/// @file
/// Points, directions, lines and placements as plain values. Coordinates in mm.

#include <array>
#include <cmath>
#include <limits>

#include "spotblue/base/export.hpp"

namespace spotblue {

struct Point {
  double x = 0.0, y = 0.0, z = 0.0;
  constexpr bool operator==(const Point&) const = default;
};
constexpr void describe(auto& fields, const Point*) {
  fields
      .value("Point",
             "A position or a difference of positions, mm; 1 long where it is a direction.")
      .member("x", &Point::x, "mm")
      .member("y", &Point::y, "mm")
      .member("z", &Point::z, "mm");
}

constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
constexpr Point operator-(Point a) { return {-a.x, -a.y, -a.z}; }
constexpr Point operator*(double k, Point a) { return {k * a.x, k * a.y, k * a.z}; }
constexpr double dot(Point a, Point b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
constexpr Point cross(Point a, Point b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline double norm(Point a) { return std::sqrt(dot(a, a)); }

/// A vector of length 1 by construction of whoever made it; the type only names the intent.
using Direction = Point;

/// a / |a|; a must not be zero.
inline Direction unit(Point a) { return (1.0 / norm(a)) * a; }

/// Any unit vector square to `along`, the same one for the same input.
SPOTBLUE_EXPORT Direction any_square(Direction along);

/// Angle between two directions whichever way each points, 0 to pi/2 rad; exact near 0.
inline double angle_between_lines(Direction a, Direction b) {
  return std::atan2(norm(cross(a, b)), std::abs(dot(a, b)));
}

struct Line {
  Point at;
  Direction along;
};
constexpr void describe(auto& fields, const Line*) {
  fields.value("Line", "An unbounded straight line.")
      .member("at", &Line::at, "a point on it, mm")
      .member("along", &Line::along, "1 long");
}

/// Position of the foot of `p` on the line, mm from line.at in the sense of line.along.
constexpr double station(const Line& line, Point p) { return dot(p - line.at, line.along); }
constexpr Point at_station(const Line& line, double s) { return line.at + s * line.along; }
/// Distance of a point from the line, mm.
inline double distance(const Line& line, Point p) { return norm(cross(p - line.at, line.along)); }

struct Frame {
  std::array<std::array<double, 4>, 3> rows{{{1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}}};
  bool operator==(const Frame&) const = default;
};
constexpr void describe(auto& fields, const Frame*) {
  fields.value("Frame", "A rigid placement: three rows of four numbers, the last of each in mm.")
      .member("rows", &Frame::rows, "rotation or mirror, then shift in mm");
}

SPOTBLUE_EXPORT Point place_point(const Frame& frame, Point p);
SPOTBLUE_EXPORT Direction place_direction(const Frame& frame, Direction d);
SPOTBLUE_EXPORT Line place_line(const Frame& frame, const Line& line);
/// First `inner`, then `outer`.
SPOTBLUE_EXPORT Frame compose(const Frame& outer, const Frame& inner);
/// The placement that undoes `frame`; exact for rotations and mirrors.
SPOTBLUE_EXPORT Frame inverse(const Frame& frame);
/// Whether the placement turns a right hand into a left one.
SPOTBLUE_EXPORT bool is_mirror(const Frame& frame);

struct Box {
  Point low{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity(),
            std::numeric_limits<double>::infinity()};
  Point high{-std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity(),
             -std::numeric_limits<double>::infinity()};
};
constexpr void describe(auto& fields, const Box*) {
  fields.value("Box", "A box along the axes; empty when low > high.")
      .member("low", &Box::low, "mm")
      .member("high", &Box::high, "mm");
}

SPOTBLUE_EXPORT bool is_empty(const Box& box);
SPOTBLUE_EXPORT void extend(Box& box, Point p);
SPOTBLUE_EXPORT void extend(Box& box, const Box& other);
/// The box grown by `by` mm on every side.
SPOTBLUE_EXPORT Box grown(const Box& box, double by);
SPOTBLUE_EXPORT bool overlap(const Box& a, const Box& b);
/// A box round the placed box (not the tightest).
SPOTBLUE_EXPORT Box place_box(const Frame& frame, const Box& box);
SPOTBLUE_EXPORT double diagonal(const Box& box);

}  // namespace spotblue
