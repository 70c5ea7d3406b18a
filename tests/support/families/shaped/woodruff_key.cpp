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

struct HalfMoon {
  double shaft = 0.0, bore = 0.0, wide = 0.0, in_shaft = 0.0, in_hub = 0.0;
  double radius = 0.0, seat_radius = 0.0, centre = 0.0, top = 0.0;
  double over = 0.0;  // of the keyway's floor above the key
};

HalfMoon half_moon(Chance& chance) {
  HalfMoon s;
  s.shaft = chance.size(18.0, 30.0);
  s.bore = s.shaft + chance.size(0.005, 0.1);
  s.wide = chance.size(3.0, 5.0);
  s.in_shaft = s.wide + chance.size(0.005, 0.05);
  s.in_hub = s.wide + chance.size(0.005, 0.08);
  s.radius = chance.size(6.5, 9.5);
  s.seat_radius = s.radius + chance.size(0.005, 0.2);
  s.centre = s.shaft / 2 + chance.size(0.5, 1.5);
  s.top = s.shaft / 2 + chance.size(1.6, 2.4);
  s.over = chance.size(0.05, 0.5);
  return s;
}

// The key's round on the keyseat's.
TrueRadial keyseat_floor(const HalfMoon& s, std::size_t rod, std::size_t key) {
  TrueRadial floor = centred(rod, key, 2.0 * s.seat_radius, 2.0 * s.radius, s.wide);
  const double to_shaft = kFullTurn / 2 - std::acos((s.shaft / 2 - s.centre) / s.seat_radius);
  const double to_top = kFullTurn / 2 - std::acos((s.top - s.centre) / s.radius);
  floor.coverage = 2.0 * std::min(to_shaft, to_top);
  // The round of the shaft ends the keyseat's floor by a curve, told in steps.
  floor.coverage_slack = to_shaft < to_top ? 1e-3 : 0.0;
  return floor;
}

}  // namespace

Station woodruff_key(Shop& shop) {
  Station station{"Woodruff key", {}, {}, {}};
  const HalfMoon s = half_moon(shop.sizes);
  const double half = s.radius + 8.0;  // of the hub's length
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const TopoDS_Shape broach = block({.x = {-s.in_hub / 2, s.in_hub / 2},
                                     .y = {0.0, s.top + s.over},
                                     .z = {-half - 1.0, half + 1.0}},
                                    {}, {});
  const auto hub = station.add(
      "Hub",
      rewritten(cut(turned(bar(s.bore, s.bore + 24.0, -half, half), before_cutting(a)), broach), a),
      a);
  const auto rod = station.add(
      "Shaft",
      rewritten(cut(turned(bar(0.0, s.shaft, -half - 9.0, half + 9.0), before_cutting(b)),
                    disc_along_x(s.seat_radius, s.in_shaft, s.centre)),
                b),
      b);
  const TopoDS_Shape above =
      block({.x = {-9.0, 9.0}, .y = {s.top, s.top + 20.0}, .z = {-20.0, 20.0}}, {}, {});
  const auto key =
      station.add("Half-moon key", cut(disc_along_x(s.radius, s.wide, s.centre), above), {});

  // Beside the key the ring of shaft and hub lacks the keyway, and the keyseat where that is
  // longer.
  TrueRadial running = centred(hub, rod, s.bore, s.shaft, 2.0 * half);
  running.coverage = kFullTurn - 2.0 * std::asin(s.in_hub / s.bore);
  station.truth.radial.push_back(running);
  station.truth.radial.push_back(keyseat_floor(s, rod, key));
  const double shaft_edge = std::sqrt(s.shaft * s.shaft - s.in_shaft * s.in_shaft) / 2;
  const double hub_edge = std::sqrt(s.bore * s.bore - s.in_hub * s.in_hub) / 2;
  station.truth.width.push_back(
      {rod, key, s.in_shaft, s.wide, 0.0, area_below(s.radius, shaft_edge - s.centre)});
  station.truth.width.push_back(
      {hub, key, s.in_hub, s.wide, 0.0,
       area_below(s.radius, s.top - s.centre) - area_below(s.radius, hub_edge - s.centre)});
  const double chord =
      2.0 * std::sqrt(s.radius * s.radius - (s.top - s.centre) * (s.top - s.centre));
  station.truth.axial.push_back({key, hub, s.over, chord * s.wide, false});
  return station;
}

}  // namespace spotblue::test
