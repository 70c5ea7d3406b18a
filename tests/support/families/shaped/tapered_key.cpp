// A key with a taper of 1 in 100 between a shaft's keyseat and a hub's sloping keyway.

#include <algorithm>
#include <cmath>

#include "support/families/family.hpp"

namespace spotblue::test {
namespace {

constexpr double kSlope = 0.01;

// What runs from z_low to z_high along z, rises at kSlope from `rise` at z = 0, and is `wide` in x.
TopoDS_Shape wedge(double wide, double z_low, double z_high, double foot, double rise,
                   const Finish& finish) {
  const Outline side{{z_low, foot},
                     {z_high, foot},
                     {z_high, rise + kSlope * z_high},
                     {z_low, rise + kSlope * z_low}};
  // The outline's x becomes z, its height stays y.
  return moved(prism(side, -wide / 2, wide / 2, finish), turn(0, 1, 0, -kFullTurn / 4));
}

}  // namespace

Station tapered_key(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"tapered key", {}, {}, {}};
  const double shaft = chance.size(24.0, 40.0);
  const double bore = shaft + chance.size(0.005, 0.1);
  const double wide = std::round(shaft / 4);
  const double in_shaft = wide + chance.size(0.005, 0.05);
  const double in_hub = wide + chance.size(0.005, 0.08);
  const double length = chance.size(24.0, 40.0);
  const double key = length - 8.0;
  const double floor = shaft / 2 - 4.0;
  const double high = 7.0;
  const double over = chance.in(0.5) ? 0.0 : chance.size(0.01, 0.3);  // along y
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const Finish c = shop.finish();
  const TopoDS_Shape broach = wedge(in_hub, -1.0, length + 1.0, 0.0, floor + high + over, {});
  const auto hub = station.add(
      "Hub",
      rewritten(cut(turned(bar(bore, bore + 30.0, 0.0, length), before_cutting(a)), broach), a), a);
  const TopoDS_Shape mill = block(
      {.x = {-in_shaft / 2, in_shaft / 2}, .y = {floor, shaft}, .z = {-3.0, length + 3.0}}, {}, {});
  const auto rod = station.add(
      "Shaft",
      rewritten(cut(turned(bar(0.0, shaft, -12.0, length + 12.0), before_cutting(b)), mill), b), b);
  const auto driven =
      station.add("Tapered key", wedge(wide, 4.0, 4.0 + key, floor, floor + high, c), c);
  TrueRadial seat = centred(hub, rod, bore, shaft, length);
  seat.coverage = kFullTurn - 2.0 * std::max(std::asin(in_hub / bore), std::asin(in_shaft / shaft));
  station.truth.radial.push_back(seat);
  const double shaft_edge = std::sqrt(shaft * shaft - in_shaft * in_shaft) / 2;
  const double hub_edge = std::sqrt(bore * bore - in_hub * in_hub) / 2;
  const double top = floor + high + kSlope * (4.0 + key / 2);  // at the key's middle
  station.truth.width.push_back({rod, driven, in_shaft, wide, 0.0, key * (shaft_edge - floor)});
  station.truth.width.push_back({hub, driven, in_hub, wide, 0.0, key * (top - hub_edge)});
  const double cosine = 1.0 / std::sqrt(1.0 + kSlope * kSlope);
  station.truth.axial.push_back({rod, driven, 0.0, key * wide, false});
  station.truth.axial.push_back({driven, hub, over * cosine, key * wide / cosine, false});
  return station;
}

}  // namespace spotblue::test
