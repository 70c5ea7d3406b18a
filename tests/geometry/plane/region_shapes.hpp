#pragma once
/// @file
/// Outlines for the region tests, each with a membership rule that does not use the library's code.

#include <cmath>
#include <functional>
#include <numbers>
#include <vector>

#include "spotblue/geometry/region.hpp"

namespace spotblue::shapes {

inline constexpr double kPi = std::numbers::pi;

inline Edge2 line(Point2 from, Point2 to) { return {from, to, 0.0, {}, 0.0}; }

inline Point2 on_circle(Point2 centre, double radius, double angle) {
  return {centre.u + radius * std::cos(angle), centre.v + radius * std::sin(angle)};
}

inline Edge2 arc(Point2 centre, double radius, double start, double sweep) {
  return {on_circle(centre, radius, start), on_circle(centre, radius, start + sweep), sweep, centre,
          radius};
}

inline Region polygon(const std::vector<Point2>& corners) {
  Region region;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    region.edges.push_back(line(corners[i], corners[(i + 1) % corners.size()]));
  }
  return region;
}

inline Region rectangle(Point2 low, Point2 high) {
  return polygon({low, {high.u, low.v}, high, {low.u, high.v}});
}

/// A disc whose rim is cut into `parts` arcs, the first starting at `start`; ends meet exactly.
inline Region split_disc(Point2 centre, double radius, int parts, double start) {
  Region region;
  std::vector<Point2> ends;
  for (int i = 0; i < parts; ++i) {
    ends.push_back(on_circle(centre, radius, start + 2.0 * kPi * i / parts));
  }
  for (std::size_t i = 0; i < ends.size(); ++i) {
    region.edges.push_back(
        {ends[i], ends[(i + 1) % ends.size()], 2.0 * kPi / parts, centre, radius});
  }
  return region;
}

inline Region turned_inside_out(Region region) {
  for (Edge2& edge : region.edges) {
    std::swap(edge.from, edge.to);
    edge.sweep = edge.sweep == 0.0 ? 0.0 : -edge.sweep;
  }
  return region;
}

inline Region both(Region a, const Region& b) {
  a.edges.insert(a.edges.end(), b.edges.begin(), b.edges.end());
  return a;
}

inline Region annulus(Point2 centre, double inner, double outer) {
  return both(disc(centre, outer), turned_inside_out(disc(centre, inner)));
}

/// Straight-flanked teeth on a rim: 4 edges a tooth, arcs on tip and root circles.
inline Region toothed_wheel(Point2 centre, double root, double tip, int teeth) {
  Region region;
  const double step = 2.0 * kPi / teeth;
  for (int i = 0; i < teeth; ++i) {
    const double a = i * step;
    const auto at = [&](double radius, double part) {
      return on_circle(centre, radius, part >= 1.0 ? (i + 1) % teeth * step : a + part * step);
    };
    region.edges.push_back({at(root, 0.0), at(root, 0.5), 0.5 * step, centre, root});
    region.edges.push_back(line(at(root, 0.5), at(tip, 0.6)));
    region.edges.push_back({at(tip, 0.6), at(tip, 0.9), 0.3 * step, centre, tip});
    region.edges.push_back(line(at(tip, 0.9), at(root, 1.0)));
  }
  return region;
}

inline PlaneMap rotation(double angle, Point2 origin) {
  return {origin, std::cos(angle), -std::sin(angle), std::sin(angle), std::cos(angle)};
}

inline PlaneMap mirror(double angle, Point2 origin) {
  return {origin, std::cos(angle), std::sin(angle), std::sin(angle), -std::cos(angle)};
}

/// Area common to two circles. Source: the circle-circle intersection formula of plane geometry,
/// sum of two circular segments r^2 acos(x / r) - x sqrt(r^2 - x^2); derived here.
inline double lens(double r1, double r2, double d) {
  const double x = (d * d + r1 * r1 - r2 * r2) / (2.0 * d);
  const double y = std::sqrt(r1 * r1 - x * x);
  return r1 * r1 * std::acos(x / r1) - x * y + r2 * r2 * std::acos((d - x) / r2) - (d - x) * y;
}

}  // namespace spotblue::shapes
