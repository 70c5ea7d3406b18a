// A plug with a broken edge in a blind hole with a broken corner: the two chamfers are no taper.

#include <algorithm>

#include "support/families/family.hpp"

namespace spotblue::test {

Station chamfered_plug(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"chamfered plug", {}, {}, {}};
  const double hole = chance.size(14.0, 40.0);
  const double plug = hole - chance.size(0.01, 0.4);
  const double deep = chance.size(12.0, 24.0);
  const double corner = chance.size(0.4, 1.0);
  const double leg = corner + chance.size(0.8, 1.2);
  const double under = face_gap(chance);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const double wall = hole / 2 + 8.0;
  const auto cup = station.add("Blind hole",
                               turned({{0.0, -8.0},
                                       {wall, -8.0},
                                       {wall, deep},
                                       {hole / 2, deep},
                                       {hole / 2, corner},
                                       {hole / 2 - corner, 0.0},
                                       {0.0, 0.0}},
                                      a),
                               a);
  const double top = deep + 9.0;
  const auto pin = station.add("Plug",
                               turned({{0.0, under},
                                       {plug / 2 - leg, under},
                                       {plug / 2, under + leg},
                                       {plug / 2, top},
                                       {0.0, top}},
                                      b),
                               b);
  station.truth.radial.push_back(
      centred(cup, pin, hole, plug, shared(corner, deep, under + leg, top)));
  station.truth.axial.push_back(
      {cup, pin, under, ring_area(0.0, std::min(hole - 2.0 * corner, plug - 2.0 * leg)), true});
  return station;
}

}  // namespace spotblue::test
