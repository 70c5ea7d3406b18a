// A bush with oil grooves: a ring groove, and axial grooves that run out or end within the bore.

#include <cmath>

#include "support/families/family.hpp"

namespace spotblue::test {

Station oil_grooves(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"oil grooves", {}, {}, {}};
  const double shaft = chance.size(14.0, 50.0);
  const double bore = shaft + chance.size(0.01, 0.2);
  const double length = chance.size(24.0, 44.0);
  const double outer = bore + chance.size(14.0, 20.0);
  const double ring = chance.in(0.5) ? 0.0 : chance.size(2.0, 4.0);
  const std::size_t grooves = 1 + chance.below(3);
  const double wide = chance.size(1.5, 3.5);
  const bool through = chance.in(0.4);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const double r = bore / 2;
  const double low = length / 2 - ring / 2;
  const double high = length / 2 + ring / 2;
  Section section = bar(bore, outer, 0.0, length);
  if (ring > 0.0) {
    section = {{r, 0.0},  {outer / 2, 0.0}, {outer / 2, length}, {r, length},
               {r, high}, {r + 2.2, high},  {r + 2.2, low},      {r, low}};
  }
  TopoDS_Shape bush = turned(section, before_cutting(a));
  const double end = through ? -1.0 : 4.0;
  const TopoDS_Shape mill =
      block({.x = {0.0, r + 2.0}, .y = {-wide / 2, wide / 2}, .z = {end, length - end}}, {}, {});
  for (std::size_t i = 0; i < grooves; ++i) {
    bush = cut(bush, moved(mill, turn(0, 0, 1, 0.4 + 2.0 * static_cast<double>(i))));
  }
  const auto outside = station.add("Grooved bush", rewritten(bush, a), a);
  const auto rod = station.add("Shaft", turned(bar(0.0, shaft, -9.0, length + 9.0), b), b);
  TrueRadial seat = centred(outside, rod, bore, shaft, length - ring);
  if (through) {
    seat.coverage -= static_cast<double>(grooves) * 2.0 * std::asin(wide / bore);
  }
  station.truth.radial.push_back(seat);
  return station;
}

}  // namespace spotblue::test
