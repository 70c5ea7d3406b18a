// A pin pressed in beside its hole's axis: a seat as long as no side is pressed deeper than a press
// fit may be, a foul too where one is.

#include "support/families/family.hpp"

namespace spotblue::test {

Station pressed_off_axis(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"pressed off axis", {}, {}, {}};
  const double hole = chance.size(14.0, 50.0);
  const double most = press_limit(hole);
  const double pressed = most * chance.between(0.1, 0.6);  // radial overlap on the axis
  const bool fouls = chance.in(0.5);
  const double aside =
      (most - pressed) * (fouls ? chance.between(1.3, 2.5) : chance.between(0.1, 0.9));
  const double pin = hole + 2.0 * pressed;
  const double length = chance.size(10.0, 30.0);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const auto hub = station.add("Hub", turned(bar(hole, hole + 24.0, 0.0, length), a), a);
  const auto rod = station.add("Pressed pin", turned(bar(0.0, pin, -9.0, length + 9.0), b), b,
                               turn(0, 0, 1, chance.between(0.0, 6.0)) * shift(aside, 0, 0));
  TrueRadial seat = centred(hub, rod, hole, pin, length);
  seat.offset = aside;
  seat.least_gap -= aside;
  station.truth.radial.push_back(seat);
  if (fouls) {
    station.truth.fouls.push_back({hub, rod, {}, 0.0});
  }
  return station;
}

}  // namespace spotblue::test
