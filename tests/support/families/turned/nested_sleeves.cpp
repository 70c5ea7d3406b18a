// Five sleeves in one another on a rod: each mates with its neighbours only, however thin it is.

#include <algorithm>

#include "support/families/family.hpp"

namespace spotblue::test {

Station nested_sleeves(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"nested sleeves", {}, {}, {}};
  double outside = chance.size(8.0, 24.0);
  double half = 24.0;
  const Finish core = shop.finish();
  std::size_t within = station.add("Rod", turned(bar(0.0, outside, -half, half), core), core);
  for (int i = 0; i < 5; ++i) {
    const double hole = outside + std::min(0.3, some_clearance(chance, outside));
    const double wall = chance.in(0.5) ? chance.size(0.3, 0.9) : chance.size(1.0, 5.0);
    half -= chance.size(1.0, 3.0);
    const Finish a = shop.finish();
    const double over = hole + 2.0 * wall;
    const auto sleeve =
        station.add("Sleeve " + std::to_string(i + 1), turned(bar(hole, over, -half, half), a), a);
    station.truth.radial.push_back(centred(sleeve, within, hole, outside, 2.0 * half));
    within = sleeve;
    outside = over;
  }
  return station;
}

}  // namespace spotblue::test
