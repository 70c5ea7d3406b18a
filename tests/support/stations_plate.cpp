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

// A plate about its own middle, put aside and turned.
Outline put_plate(double half_x, double half_y, const Spot& at, double angle) {
  const double cos = std::cos(angle);
  const double sin = std::sin(angle);
  Outline corners;
  for (const auto& [x, y] : {Spot{-half_x, -half_y}, Spot{half_x, -half_y}, Spot{half_x, half_y},
                             Spot{-half_x, half_y}}) {
    corners.push_back({at.x + cos * x - sin * y, at.y + sin * x + cos * y});
  }
  return corners;
}

struct Shim {
  double thick = 0.0, below = 0.0, above = 0.0;
};
constexpr double kShimArea = 56.0;  // mm2

void add_shim(Station& station, const Shim& shim, std::size_t lower, std::size_t upper,
              const Finish& finish) {
  const auto leaf = station.add(
      "Shim", block({.x = {1.0, 8.0}, .y = {-4.0, 4.0}, .z = {0.0, shim.thick}}, {}, finish),
      finish, shift(0, 0, shim.below));
  add_faces(station, lower, leaf, shim.below, kShimArea, false);
  add_faces(station, leaf, upper, shim.above, kShimArea, false);
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
  const Shim shim{chance.size(0.2, 0.7), face_gap(chance) * 0.3, face_gap(chance) * 0.3};
  const double gap = shimmed          ? shim.below + shim.thick + shim.above
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
  const Outline corners = put_plate(over_x, over_y, {dx, dy}, angle);
  double area = outline_area(clipped(corners, half_x, half_y)) - ring_area(0.0, hole_a) -
                ring_area(0.0, hole_b);
  if (shimmed) {
    add_shim(station, shim, lower, upper, shop.finish());
    area -= kShimArea;
  }
  add_faces(station, lower, upper, gap, area, false);
  return station;
}

}  // namespace spotblue::test
