// The same part twice in one place, as a slip of the mouse leaves it.

#include "support/families/family.hpp"

namespace spotblue::test {

Station duplicate(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"duplicate", {}, {}, {}};
  const double x = chance.size(8.0, 25.0);
  const double y = chance.size(8.0, 25.0);
  const double z = chance.size(6.0, 20.0);
  const double hole = chance.size(4.0, 10.0);
  const Finish a = shop.finish();
  const bool round = chance.in(0.5);
  const TopoDS_Shape part =
      round ? turned(bar(hole, hole + x, 0.0, z), a)
            : block({.x = {-x, x}, .y = {-y, y}, .z = {0.0, z}}, {{0, 0, hole}}, a);
  const auto one = station.add("Doubled", part, a);
  const auto two = station.add_again(one, gp_Trsf());
  const double area = round ? ring_area(hole, hole + x) : 4.0 * x * y - ring_area(0.0, hole);
  station.truth.fouls.push_back({one, two, area * z, 0.0});
  return station;
}

}  // namespace spotblue::test
