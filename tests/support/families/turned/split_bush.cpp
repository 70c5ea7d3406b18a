// A bush in two halves between a housing and a shaft, with or without a gap at the split.

#include <cmath>

#include "support/families/family.hpp"

namespace spotblue::test {
namespace {

double chord(double diameter, double half_gap) {
  return std::sqrt(diameter * diameter / 4 - half_gap * half_gap);
}

}  // namespace

Station split_bush(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"split bush", {}, {}, {}};
  const double outside = chance.size(20.0, 50.0);
  const double hole = outside + chance.size(0.005, 0.3);
  const double inside = outside - 2.0 * chance.size(2.0, 5.0);
  const double shaft = inside - chance.size(0.005, 0.3);
  const double length = chance.size(12.0, 30.0);
  const double gap = chance.in(0.4) ? 0.0 : chance.size(0.05, 1.9);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const Finish c = shop.finish();
  const double half = outside / 2 + 10.0;
  const auto house = station.add(
      "Cap and saddle",
      block({.x = {-half, half}, .y = {-half, half}, .z = {0.0, length}}, {{0, 0, hole}}, a), a);
  const TopoDS_Shape ring = turned(bar(inside, outside, 0.0, length), before_cutting(b));
  const TopoDS_Shape upper =
      block({.x = {-half, half}, .y = {gap / 2, half}, .z = {-1.0, length + 1.0}}, {}, {});
  const auto one = station.add("Half bush", rewritten(common(ring, upper), b), b);
  const auto two = station.add_again(one, turn(0, 0, 1, kFullTurn / 2));
  const auto pin = station.add("Shaft", turned(bar(0.0, shaft, -10.0, length + 10.0), c), c);
  for (const std::size_t bush : {one, two}) {
    TrueRadial outer = centred(house, bush, hole, outside, length);
    outer.coverage = kFullTurn / 2 - 2.0 * std::asin(gap / outside);
    TrueRadial inner = centred(bush, pin, inside, shaft, length);
    inner.coverage = kFullTurn / 2 - 2.0 * std::asin(gap / inside);
    station.truth.radial.push_back(outer);
    station.truth.radial.push_back(inner);
  }
  const double wall = chord(outside, gap / 2) - chord(inside, gap / 2);
  station.truth.axial.push_back({one, two, gap, 2.0 * wall * length, false});
  return station;
}

}  // namespace spotblue::test
