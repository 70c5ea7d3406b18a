// An O-ring drawn round in a shaft's groove: loose, or squeezed by the bore and by the floor.

#include <algorithm>
#include <cmath>

#include "support/families/family.hpp"

namespace spotblue::test {
namespace {

// mm3 of a ring of round section (radius r, its middle on radius R) that lies farther than `wall`
// from the axis (side = 1) or nearer (side = -1): the segment's area times its centroid's way
// round (Pappus).
double squeezed(double r, double middle, double wall, double side) {
  const double h = side * (wall - middle);  // from the section's centre to the chord
  const double angle = std::acos(h / r);
  const double area = r * r * (angle - std::sin(angle) * std::cos(angle));
  const double moment = 2.0 / 3.0 * std::pow(r * std::sin(angle), 3);
  return kFullTurn * (middle * area + side * moment);
}

}  // namespace

Station o_ring(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"O-ring", {}, {}, {}};
  const double thick = chance.size(2.2, 4.0);
  const double floor = chance.size(16.0, 36.0);
  const bool tight = chance.in(0.6);
  const double gland = thick + (tight ? -chance.size(0.15, 0.45) : chance.size(0.05, 0.3));
  const double bore = floor + 2.0 * gland;
  const double shaft = bore - chance.size(0.02, 0.3);
  const double on_floor = tight ? -chance.size(0.0, 0.1) : chance.size(0.01, 0.04);
  const double middle = floor / 2 + on_floor + thick / 2;
  const double wide = thick * 1.4;
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const auto house = station.add("Bored body", turned(bar(bore, bore + 16.0, -4.0, 30.0), a), a);
  const auto rod = station.add("Grooved spindle",
                               turned({{0.0, -12.0},
                                       {shaft / 2, -12.0},
                                       {shaft / 2, 10.0},
                                       {floor / 2, 10.0},
                                       {floor / 2, 10.0 + wide},
                                       {shaft / 2, 10.0 + wide},
                                       {shaft / 2, 36.0},
                                       {0.0, 36.0}},
                                      b),
                               b);
  const auto ring = station.add("O-ring", round_ring(2.0 * middle, thick, 10.0 + wide / 2), {});
  station.truth.radial.push_back(centred(house, rod, bore, shaft, 34.0 - wide));
  const double out = middle + thick / 2 - bore / 2;
  if (out > 1e-6) {
    station.truth.fouls.push_back({house, ring, squeezed(thick / 2, middle, bore / 2, 1.0), 0.0});
  }
  if (on_floor < -1e-6) {
    station.truth.fouls.push_back({rod, ring, squeezed(thick / 2, middle, floor / 2, -1.0), 0.0});
  }
  return station;
}

}  // namespace spotblue::test
