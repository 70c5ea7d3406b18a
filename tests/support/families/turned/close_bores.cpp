// Bores so near to one another that a pin must not be given to its neighbour's.

#include <cmath>

#include "support/families/family.hpp"

namespace spotblue::test {

Station close_bores(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"close bores", {}, {}, {}};
  const bool tiny = chance.in(0.5);  // 0.6 mm from axis to axis, or from wall to wall
  const double hole = tiny ? chance.size(0.28, 0.44) : chance.size(4.0, 12.0);
  const double pitch = tiny ? 0.6 : hole + 0.6;
  const double clearance = tiny ? chance.size(0.004, 0.05) : chance.size(0.004, 0.4);
  const double pin = hole - clearance;
  const double deep = tiny ? 6.0 : 15.0;
  std::vector<Drilled> holes;
  for (int i = 0; i < 4; ++i) {
    holes.push_back({pitch * (i % 2), pitch * (i / 2), hole});
  }
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const double half = hole + 8.0;
  const auto plate = station.add(
      "Pin plate",
      block({.x = {-half, half + pitch}, .y = {-half, half + pitch}, .z = {0.0, deep}}, holes, a),
      a);
  const TopoDS_Shape one = turned(bar(0.0, pin, -3.0, deep + 3.0), b);
  std::size_t first = 0;
  for (const Drilled& at : holes) {
    const double aside = chance.in(0.5) ? 0.0 : clearance / 2 * chance.between(0.1, 0.9);
    const double way = chance.between(0.0, kFullTurn);
    const gp_Trsf place = shift(at.x + aside * std::cos(way), at.y + aside * std::sin(way), 0.0);
    const auto here =
        first == 0 ? station.add("Pin", one, b, place) : station.add_again(first, place);
    first = first == 0 ? here : first;
    TrueRadial seat = centred(plate, here, hole, pin, deep);
    seat.offset = aside;
    seat.least_gap -= aside;
    station.truth.radial.push_back(seat);
  }
  return station;
}

}  // namespace spotblue::test
