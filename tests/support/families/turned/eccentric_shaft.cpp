// A shaft with an eccentric: a strap on the eccentric, a bearing on the journal at either side.

#include "support/families/family.hpp"

namespace spotblue::test {

Station eccentric_shaft(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"eccentric shaft", {}, {}, {}};
  const double journal = chance.size(12.0, 24.0);
  const double aside = chance.in(0.4) ? chance.size(0.1, 0.6) : chance.size(0.6, 7.0);
  const double sheave = journal + 2.0 * aside + chance.size(4.0, 12.0);
  const double wide = chance.size(8.0, 16.0);
  const Finish a = shop.finish();
  const TopoDS_Shape round = turned(bar(0.0, journal, -30.0, wide + 30.0), before_cutting(a));
  const TopoDS_Shape disc =
      moved(turned(bar(0.0, sheave, 0.0, wide), before_cutting(a)), shift(aside, 0, 0));
  const auto shaft = station.add("Eccentric shaft", rewritten(fuse(round, disc), a), a);
  const auto ring = [&](const char* name, double on, double from, double to, double x) {
    const double hole = on + some_clearance(chance, on);
    const Finish b = shop.finish();
    const auto placed = station.add(name, turned(bar(hole, on + 18.0, from, to), b), b,
                                    shift(x, 0, 0) * turn(0, 0, 1, chance.between(0.0, 6.0)));
    station.truth.radial.push_back(centred(placed, shaft, hole, on, to - from));
  };
  ring("Strap", sheave, 1.0, wide - 1.0, aside);
  ring("Left bearing", journal, -24.0, -10.0, 0.0);
  ring("Right bearing", journal, wide + 9.0, wide + 25.0, 0.0);
  return station;
}

}  // namespace spotblue::test
