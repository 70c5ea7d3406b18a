// A shaft in a half bearing: it may lie anywhere below, or be lifted off, and only the half that is
// there tells how near it comes.

#include <cmath>

#include "support/families/family.hpp"

namespace spotblue::test {

Station saddle(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"saddle", {}, {}, {}};
  const double hole = chance.size(16.0, 50.0);
  const double gap = chance.size(0.02, 0.6);  // radial
  const double shaft = hole - 2.0 * gap;
  const double length = chance.size(10.0, 30.0);
  const bool lifted = chance.in(0.4);
  const double aside = lifted ? chance.between(0.05, 0.45) : gap * chance.between(0.0, 0.9);
  // The half is at negative y.
  const double way = lifted ? kFullTurn / 4 : -chance.between(0.2, 2.9);
  const double half = hole / 2 + 9.0;
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const TopoDS_Shape solid =
      block({.x = {-half, half}, .y = {-half, 0.0}, .z = {0.0, length}}, {}, {});
  const TopoDS_Shape boring = turned(bar(0.0, hole, -1.0, length + 1.0), {});
  const auto below = station.add("Saddle", rewritten(cut(solid, boring), a), a);
  const auto rod = station.add("Shaft", turned(bar(0.0, shaft, -9.0, length + 9.0), b), b,
                               shift(aside * std::cos(way), aside * std::sin(way), 0.0));
  TrueRadial seat = centred(below, rod, hole, shaft, length);
  seat.coverage = kFullTurn / 2;
  seat.offset = aside;
  // Lifted straight off, the shaft comes nearest at the half's two edges.
  const double r = shaft / 2;
  seat.least_gap = hole / 2 - (lifted ? std::sqrt(r * r - aside * aside) : r + aside);
  station.truth.radial.push_back(seat);
  return station;
}

}  // namespace spotblue::test
