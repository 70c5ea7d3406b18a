// A shaft through three housings, whose faces touch, stand a little apart or far apart.

#include <algorithm>

#include "support/families/family.hpp"

namespace spotblue::test {

Station three_housings(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"three housings", {}, {}, {}};
  const double shaft = chance.size(8.0, 30.0);
  struct House {
    std::size_t placed = 0;
    double hole = 0.0, half = 0.0;
  };
  std::vector<House> houses;
  double z = 0.0;
  double gap = 0.0;
  for (int i = 0; i < 3; ++i) {
    const double hole = shaft + some_clearance(chance, shaft);
    const double half = shaft / 2 + chance.size(6.0, 14.0);
    const double length = chance.size(6.0, 18.0);
    const Finish a = shop.finish();
    const auto placed = station.add(
        "Housing " + std::to_string(i + 1),
        block({.x = {-half, half}, .y = {-half, half}, .z = {0.0, length}}, {{0, 0, hole}}, a), a,
        shift(0, 0, z));
    if (i > 0 && gap < 2.0) {
      const House& last = houses.back();
      const double least = 2.0 * std::min(half, last.half);
      add_faces(station, last.placed, placed, gap,
                least * least - ring_area(0.0, std::max(hole, last.hole)));
    }
    houses.push_back({placed, hole, half});
    z += length;
    gap = chance.in(0.6) ? face_gap(chance) : chance.size(2.5, 15.0);
    z += gap;
    station.truth.radial.push_back(centred(placed, 0, hole, shaft, length));
  }
  const Finish b = shop.finish();
  const auto pin = station.add("Through shaft", turned(bar(0.0, shaft, -12.0, z + 12.0), b), b);
  for (TrueRadial& seat : station.truth.radial) {
    seat.shaft = pin;
  }
  return station;
}

}  // namespace spotblue::test
