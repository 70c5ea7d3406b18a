// A half-moon key in a shaft's round-bottomed keyseat, its top in a hub's straight keyway.

#include <BRepPrimAPI_MakeCylinder.hxx>
#include <algorithm>
#include <cmath>

#include "support/families/family.hpp"

namespace spotblue::test {
namespace {

// A disc along x about (y, z) = (height, 0).
TopoDS_Shape disc_along_x(double radius, double thick, double height) {
  const gp_Ax2 axis(gp_Pnt(-thick / 2, height, 0.0), gp_Dir(1, 0, 0));
  return BRepPrimAPI_MakeCylinder(axis, radius, thick).Shape();
}

// Of a disc of that radius, what lies below a chord at the height.
double area_below(double radius, double height) {
  return radius * radius * (kFullTurn / 2 - std::acos(height / radius)) +
         height * std::sqrt(radius * radius - height * height);
}

}  // namespace

Station woodruff_key(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"Woodruff key", {}, {}, {}};
  const double shaft = chance.size(18.0, 30.0);
  const double bore = shaft + chance.size(0.005, 0.1);
  const double wide = chance.size(3.0, 5.0);
  const double in_shaft = wide + chance.size(0.005, 0.05);
  const double in_hub = wide + chance.size(0.005, 0.08);
  const double radius = chance.size(6.5, 9.5);
  const double seat_radius = radius + chance.size(0.005, 0.2);
  const double centre = shaft / 2 + chance.size(0.5, 1.5);
  const double top = shaft / 2 + chance.size(1.6, 2.4);
  const double over = chance.size(0.05, 0.5);  // of the keyway's floor above the key
  const double half = radius + 8.0;            // of the hub's length
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const TopoDS_Shape broach = block(
      {.x = {-in_hub / 2, in_hub / 2}, .y = {0.0, top + over}, .z = {-half - 1.0, half + 1.0}}, {},
      {});
  const auto hub = station.add(
      "Hub",
      rewritten(cut(turned(bar(bore, bore + 24.0, -half, half), before_cutting(a)), broach), a), a);
  const auto rod =
      station.add("Shaft",
                  rewritten(cut(turned(bar(0.0, shaft, -half - 9.0, half + 9.0), before_cutting(b)),
                                disc_along_x(seat_radius, in_shaft, centre)),
                            b),
                  b);
  const TopoDS_Shape above =
      block({.x = {-9.0, 9.0}, .y = {top, top + 20.0}, .z = {-20.0, 20.0}}, {}, {});
  const auto key = station.add("Half-moon key", cut(disc_along_x(radius, wide, centre), above), {});

  // Beside the key the ring of shaft and hub lacks the keyway, and the keyseat where that is
  // longer.
  TrueRadial running = centred(hub, rod, bore, shaft, 2.0 * half);
  running.coverage = kFullTurn - 2.0 * std::asin(in_hub / bore);
  station.truth.radial.push_back(running);
  TrueRadial floor = centred(rod, key, 2.0 * seat_radius, 2.0 * radius, wide);
  const double to_shaft = kFullTurn / 2 - std::acos((shaft / 2 - centre) / seat_radius);
  const double to_top = kFullTurn / 2 - std::acos((top - centre) / radius);
  floor.coverage = 2.0 * std::min(to_shaft, to_top);
  // The round of the shaft ends the keyseat's floor by a curve, told in steps.
  floor.coverage_slack = to_shaft < to_top ? 1e-3 : 0.0;
  station.truth.radial.push_back(floor);
  const double shaft_edge = std::sqrt(shaft * shaft - in_shaft * in_shaft) / 2;
  const double hub_edge = std::sqrt(bore * bore - in_hub * in_hub) / 2;
  station.truth.width.push_back(
      {rod, key, in_shaft, wide, 0.0, area_below(radius, shaft_edge - centre)});
  station.truth.width.push_back(
      {hub, key, in_hub, wide, 0.0,
       area_below(radius, top - centre) - area_below(radius, hub_edge - centre)});
  const double chord = 2.0 * std::sqrt(radius * radius - (top - centre) * (top - centre));
  station.truth.axial.push_back({key, hub, over, chord * wide, false});
  return station;
}

}  // namespace spotblue::test
