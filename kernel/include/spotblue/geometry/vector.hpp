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

/// Throws Error bad_input: three numbers that are no direction.
[[noreturn]] SPOTBLUE_EXPORT void refuse_direction(double x, double y, double z);

/// A vector 1 long, whatever it is made of; along z where nothing is said. Numbers that are none
/// stay so.
class Direction {
 public:
  constexpr Direction() = default;
  /// @throws Error bad_input unless it is 1 long within 1e-9: for all else there is unit().
  constexpr Direction(double x, double y, double z) : x_(x), y_(y), z_(z) {
    constexpr double kRounding = 2e-9;  // of the square; choice of this program, no source
    const double off = x * x + y * y + z * z - 1.0;
    if (off > kRounding || off < -kRounding) {
      refuse_direction(x, y, z);
    }
  }
  /// @throws Error as above.
  constexpr explicit Direction(Point p) : Direction(p.x, p.y, p.z) {}

  [[nodiscard]] constexpr double x() const { return x_; }
  [[nodiscard]] constexpr double y() const { return y_; }
  [[nodiscard]] constexpr double z() const { return z_; }
  // A direction may stand wherever any vector may.
  constexpr operator Point() const { return {x_, y_, z_}; }  // NOLINT(*-explicit-*)
  constexpr Direction operator-() const { return {-x_, -y_, -z_}; }
  constexpr bool operator==(const Direction&) const = default;

 private:
  double x_ = 0.0, y_ = 0.0, z_ = 1.0;
};

/// a / |a|; a must not be zero: no number comes of it.
inline Direction unit(Point a) { return Direction((1.0 / norm(a)) * a); }

/// What should be 1 long and may be off by a thousandth, as what comes of two directions that are
/// not quite square or of a placement that is not quite rigid: made so where it is off by more than
/// rounding.
/// @throws Error bad_input where it is off by more.
inline Direction almost_unit(Point a) {
  constexpr double kRounding = 5e-10, kMostOff = 1e-3;  // choice of this program, no source
  const double off = std::abs(norm(a) - 1.0);
  return off > kRounding && off < kMostOff ? unit(a) : Direction(a);
}

/// The third of a right hand whose first two are almost square to each other.
/// @throws Error bad_input where they are not.
inline Direction third(Direction a, Direction b) { return almost_unit(cross(a, b)); }

/// `from` turned by so many rad to `quarter`, which is almost square to it.
/// @throws Error bad_input where it is not.
inline Direction turned(Direction from, Direction quarter, double angle) {
  return almost_unit(std::cos(angle) * from + std::sin(angle) * quarter);
}

/// Any unit vector square to `along`, the same one for the same input.
SPOTBLUE_EXPORT Direction any_square(Direction along);

/// Angle between two vectors of any length whichever way each points, 0 to pi/2 rad; exact near 0.
inline double angle_between_lines(Point a, Point b) {
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
