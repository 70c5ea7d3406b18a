// A piston in its bore with a ring in its groove that bears on the bore.

#include <algorithm>

#include "support/families/family.hpp"

namespace spotblue::test {

Station piston_ring(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"piston ring", {}, {}, {}};
  const double bore = chance.size(24.0, 60.0);
  const double piston = bore - chance.size(0.05, 0.6);
  const double floor = bore - 2.0 * chance.size(3.0, 4.0);
  const double ring = bore - (chance.in(0.5) ? 0.0 : chance.size(0.01, 0.1));
  const double ring_in = floor + chance.size(0.1, 1.6);
  const double thick = chance.size(1.5, 3.0);
  const double slack = chance.size(0.02, 0.2);
  const double below = slack * chance.between(0.1, 0.9);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const Finish c = shop.finish();
  const auto cylinder = station.add("Cylinder", turned(bar(bore, bore + 16.0, -20.0, 40.0), a), a);
  const double top = 10.0 + thick + slack;
  const auto body = station.add("Piston",
                                turned({{0.0, 0.0},
                                        {piston / 2, 0.0},
                                        {piston / 2, 10.0},
                                        {floor / 2, 10.0},
                                        {floor / 2, top},
                                        {piston / 2, top},
                                        {piston / 2, 24.0},
                                        {0.0, 24.0}},
                                       b),
                                b);
  const auto hoop = station.add("Piston ring", turned(bar(ring_in, ring, 0.0, thick), c), c,
                                shift(0, 0, 10.0 + below));
  station.truth.radial.push_back(centred(cylinder, body, bore, piston, 24.0 - thick - slack));
  station.truth.radial.push_back(centred(cylinder, hoop, bore, ring, thick));
  station.truth.radial.push_back(centred(hoop, body, ring_in, floor, thick));
  add_faces(station, body, hoop, below, ring_area(ring_in, std::min(piston, ring)));
  add_faces(station, body, hoop, slack - below, ring_area(ring_in, std::min(piston, ring)));
  return station;
}

}  // namespace spotblue::test
