// A square or a hexagon in its like, centred or aside within its play.

#include <algorithm>
#include <cmath>

#include "support/families/family.hpp"

namespace spotblue::test {

Station polygon_joint(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"polygon joint", {}, {}, {}};
  const std::size_t sides = chance.in(0.5) ? 4 : 6;
  const double flats = chance.size(8.0, 30.0);
  const double draw = chance.between(0.0, 1.0);
  const double slack = draw < 0.2 ? -0.008 : draw < 0.4 ? 0.0 : chance.size(0.01, 0.5);
  const double length = chance.size(8.0, 24.0);
  const double aside = std::max(0.0, slack) / 2 * chance.between(0.0, 0.9);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const double step = kFullTurn / static_cast<double>(sides);
  const double hole_side = (flats + slack) * std::tan(step / 2);
  const double bar_side = flats * std::tan(step / 2);
  const TopoDS_Shape round = turned(bar(0.0, 2.0 * flats + 10.0, 0.0, length), before_cutting(a));
  const TopoDS_Shape broach = prism(polygon(sides, flats + slack), -1.0, length + 1.0, {});
  const auto hub = station.add("Broached hub", rewritten(cut(round, broach), a), a);
  const auto rod = station.add("Rod", prism(polygon(sides, flats), -8.0, length + 8.0, b), b,
                               shift(aside, 0, 0));
  for (std::size_t i = 0; i < sides / 2; ++i) {
    const double way = step * static_cast<double>(i);
    const double along = aside * std::abs(std::sin(way));
    const double wide = std::min(bar_side / 2 + along, hole_side / 2) -
                        std::max(along - bar_side / 2, -hole_side / 2);
    station.truth.width.push_back(
        {hub, rod, flats + slack, flats, aside * std::abs(std::cos(way)), wide * length});
  }
  return station;
}

}  // namespace spotblue::test
