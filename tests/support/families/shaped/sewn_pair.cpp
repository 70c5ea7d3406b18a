// A hub and a shaft sewn of loose faces, as solids come that were mended after an exchange.

#include "support/families/family.hpp"

namespace spotblue::test {

Station sewn_pair(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"sewn pair", {}, {}, {}};
  const double shaft = chance.size(8.0, 40.0);
  const double hole = shaft + some_clearance(chance, shaft);
  const double length = chance.size(10.0, 30.0);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const double half = hole / 2 + 9.0;
  const auto hub = station.add(
      "Sewn hub",
      sewn(block({.x = {-half, half}, .y = {-half, half}, .z = {0.0, length}}, {{0, 0, hole}}, a)),
      a);
  const auto rod =
      station.add("Sewn shaft", sewn(turned(bar(0.0, shaft, -9.0, length + 9.0), b)), b);
  station.truth.radial.push_back(centred(hub, rod, hole, shaft, length));
  return station;
}

}  // namespace spotblue::test
