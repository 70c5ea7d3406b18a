// Stations of plates on one another, with holes and shims and no centre line.

#include <array>
#include <cmath>

#include "support/station.hpp"

namespace spotblue::test {
namespace {

// What of a convex outline lies within |x| <= half_x, |y| <= half_y.
Outline clipped(Outline outline, double half_x, double half_y) {
  const std::array<std::array<double, 3>, 4> sides{
      {{1, 0, half_x}, {-1, 0, half_x}, {0, 1, half_y}, {0, -1, half_y}}};
  for (const auto& [nx, ny, most] : sides) {
    Outline kept;
    for (std::size_t i = 0; i < outline.size(); ++i) {
      const Spot& a = outline[i];
      const Spot& b = outline[(i + 1) % outline.size()];
      const double out_a = nx * a.x + ny * a.y - most;
      const double out_b = nx * b.x + ny * b.y - most;
      if (out_a <= 0.0) {
        kept.push_back(a);
      }
      if ((out_a < 0.0) != (out_b < 0.0)) {
        const double t = out_a / (out_a - out_b);
        kept.push_back({a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)});
      }
    }
    outline = kept;
  }
  return outline;
}

}  // namespace

Station plates(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"plates", {}, {}, {}};
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const double half_x = chance.size(22.0, 34.0);
  const double half_y = chance.size(18.0, 28.0);
  const double over_x = chance.size(16.0, 30.0);
  const double over_y = chance.size(16.0, 26.0);
  const double angle = chance.in(0.5) ? 0.0 : chance.between(0.0, 6.0);
  const double dx = chance.size(-3.0, 3.0);
  const double dy = chance.size(-3.0, 3.0);
  const double hole_a = chance.size(3.0, 5.0);
  const double hole_b = chance.size(3.0, 5.0);
  const bool shimmed = chance.in(0.35);
  const double shim = chance.size(0.2, 0.7);
  const double below = face_gap(chance) * 0.3;
  const double above = face_gap(chance) * 0.3;
  const double gap = shimmed          ? below + shim + above
                     : chance.in(0.3) ? -chance.size(0.005, 0.95)
                                      : face_gap(chance);
  const auto lower =
      station.add("Bed plate",
                  block({.x = {-half_x, half_x}, .y = {-half_y, half_y}, .z = {-8.0, 0.0}},
                        {{-5.0, 4.0, hole_a}}, a),
                  a);
  // The upper plate's own frame: its hole is drilled so that it comes to (-5, -4).
  const double cos = std::cos(angle);
  const double sin = std::sin(angle);
  const double hx = -5.0 - dx;
  const double hy = -4.0 - dy;
  const auto upper =
      station.add("Top plate",
                  block({.x = {-over_x, over_x}, .y = {-over_y, over_y}, .z = {0.0, 7.0}},
                        {{cos * hx + sin * hy, -sin * hx + cos * hy, hole_b}}, b),
                  b, shift(dx, dy, gap) * turn(0, 0, 1, angle));
  Outline corners;
  for (const auto& [x, y] : {Spot{-over_x, -over_y}, Spot{over_x, -over_y}, Spot{over_x, over_y},
                             Spot{-over_x, over_y}}) {
    corners.push_back({dx + cos * x - sin * y, dy + sin * x + cos * y});
  }
  double area = outline_area(clipped(corners, half_x, half_y)) - ring_area(0.0, hole_a) -
                ring_area(0.0, hole_b);
  if (shimmed) {
    const Finish c = shop.finish();
    const auto leaf =
        station.add("Shim", block({.x = {1.0, 8.0}, .y = {-4.0, 4.0}, .z = {0.0, shim}}, {}, c), c,
                    shift(0, 0, below));
    area -= 56.0;
    add_faces(station, lower, leaf, below, 56.0, false);
    add_faces(station, leaf, upper, above, 56.0, false);
  }
  add_faces(station, lower, upper, gap, area, false);
  return station;
}

}  // namespace spotblue::test
