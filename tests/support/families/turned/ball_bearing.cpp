// Balls in their races between a shaft and a housing: seats on the rings, none on the balls.

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <BRepPrimAPI_MakeSphere.hxx>
#include <GC_MakeArcOfCircle.hxx>
#include <array>
#include <cmath>
#include <gp_Ax1.hxx>

#include "support/families/family.hpp"

namespace spotblue::test {
namespace {

// A ring from `plain` to `shoulder` (radii), with a race of radius `race` about `pitch` in it.
TopoDS_Shape raced_ring(double plain, double shoulder, double pitch, double race, double wide) {
  const auto at = [](double r, double z) { return gp_Pnt(r, 0, z); };
  const double half = std::sqrt(race * race - (pitch - shoulder) * (pitch - shoulder));
  const double floor = shoulder < pitch ? pitch - race : pitch + race;
  const std::array<gp_Pnt, 6> corners{at(shoulder, half),      at(shoulder, wide / 2),
                                      at(plain, wide / 2),     at(plain, -wide / 2),
                                      at(shoulder, -wide / 2), at(shoulder, -half)};
  BRepBuilderAPI_MakeWire wire;
  for (std::size_t i = 0; i + 1 < corners.size(); ++i) {
    wire.Add(BRepBuilderAPI_MakeEdge(corners.at(i), corners.at(i + 1)).Edge());
  }
  wire.Add(BRepBuilderAPI_MakeEdge(
               GC_MakeArcOfCircle(corners.back(), at(floor, 0.0), corners.front()).Value())
               .Edge());
  const gp_Ax1 axis(gp_Pnt(0, 0, 0), gp_Dir(0, 0, 1));
  return BRepPrimAPI_MakeRevol(BRepBuilderAPI_MakeFace(wire.Wire(), true).Face(), axis).Shape();
}

}  // namespace

Station ball_bearing(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"ball bearing", {}, {}, {}};
  const double shaft = chance.size(10.0, 20.0);
  const double inner = shaft + some_clearance(chance, shaft);
  const double ball = chance.size(5.0, 8.0);
  const double pitch = inner + 2.0 * ball + 4.0;
  const double outside = pitch + 2.0 * ball + 4.0;
  const double hole = outside + some_clearance(chance, outside);
  const double wide = ball + 5.0;
  const double race = ball / 2 + chance.size(0.05, 0.3);
  const double shoulder = ball * 0.25;  // from the pitch circle to the rings' shoulders
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const auto rod = station.add("Shaft", turned(bar(0.0, shaft, -20.0, 20.0), a), a);
  const auto house = station.add("Housing", turned(bar(hole, hole + 14.0, -15.0, 15.0), b), b);
  const auto in = station.add(
      "Inner ring", raced_ring(inner / 2, pitch / 2 - shoulder, pitch / 2, race, wide), {});
  const auto out = station.add(
      "Outer ring", raced_ring(outside / 2, pitch / 2 + shoulder, pitch / 2, race, wide), {});
  const std::size_t balls = 2 + chance.below(3);
  const double step = kFullTurn / static_cast<double>(balls + 2);
  std::size_t first = 0;
  for (std::size_t i = 0; i < balls; ++i) {
    const gp_Trsf at = turn(0, 0, 1, step * static_cast<double>(i)) * shift(pitch / 2, 0, 0);
    const auto here = i == 0 ? station.add("Ball", BRepPrimAPI_MakeSphere(ball / 2).Shape(), {}, at)
                             : station.add_again(first, at);
    first = i == 0 ? here : first;
  }
  station.truth.radial.push_back(centred(in, rod, inner, shaft, wide));
  station.truth.radial.push_back(centred(house, out, hole, outside, wide));
  return station;
}

}  // namespace spotblue::test
