// A journal that wore to a slight taper in a round bore, the small end either way.

#include <algorithm>

#include "support/families/family.hpp"

namespace spotblue::test {

Station worn_journal(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"worn journal", {}, {}, {}};
  const double length = chance.size(20.0, 40.0);
  const double small = chance.size(14.0, 30.0);
  const double big = small + chance.size(0.02, 0.003 * length);
  const double bore = big + chance.size(0.005, 0.1);
  const double over = chance.in(0.5) ? 6.0 : -4.0;  // how far the hub stands beyond the taper
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const auto hub = station.add("Hub", turned(bar(bore, bore + 14.0, -over, length + over), a), a);
  const bool falls = chance.in(0.5);
  const double first = falls ? big : small;
  const double last = falls ? small : big;
  const auto shaft = station.add("Worn shaft",
                                 turned({{0.0, -20.0},
                                         {small / 2 - 2.0, -20.0},
                                         {small / 2 - 2.0, 0.0},
                                         {first / 2, 0.0},
                                         {last / 2, length},
                                         {small / 2 - 2.0, length},
                                         {small / 2 - 2.0, length + 20.0},
                                         {0.0, length + 20.0}},
                                        b),
                                 b);
  const double inset = std::max(0.0, -over);
  const double cut_off = (big - small) * inset / length;
  TrueRadial seat = centred(hub, shaft, bore, 0.5 * (big + small), length - 2.0 * inset);
  seat.least_gap = 0.5 * (bore - big + cut_off);
  station.truth.radial.push_back(seat);
  return station;
}

}  // namespace spotblue::test
