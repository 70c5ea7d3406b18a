// A slide in a dovetailed bed: two sloping flanks and the floor.

#include <algorithm>
#include <cmath>

#include "support/families/family.hpp"

namespace spotblue::test {

Station dovetail(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"dovetail", {}, {}, {}};
  const double angle = (chance.in(0.5) ? 55.0 : 60.0) * kFullTurn / 360.0;
  const double foot = chance.size(14.0, 24.0);  // half the slot's width at its floor
  const double deep = chance.size(6.0, 10.0);
  const double play = chance.in(0.3) ? 0.0 : chance.size(0.01, 0.6);  // along x, each side
  const double under = chance.in(0.5) ? 0.0 : chance.size(0.02, 1.8);
  const double length = chance.size(20.0, 40.0);
  const auto half = [&](double y) { return foot - y / std::tan(angle); };
  const auto slide_half = [&](double y) { return half(y) - play; };
  const double top = deep + 3.0;
  const double edge = foot + 12.0;
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const auto bed = station.add("Dovetailed bed",
                               prism({{-edge, -12.0},
                                      {edge, -12.0},
                                      {edge, deep},
                                      {half(deep), deep},
                                      {foot, 0.0},
                                      {-foot, 0.0},
                                      {-half(deep), deep},
                                      {-edge, deep}},
                                     -10.0, length + 10.0, a),
                               a);
  const auto slide = station.add("Slide",
                                 prism({{-slide_half(under), under},
                                        {slide_half(under), under},
                                        {slide_half(top), top},
                                        {slide_half(top), top + 12.0},
                                        {-slide_half(top), top + 12.0},
                                        {-slide_half(top), top}},
                                       0.0, length, b),
                                 b);
  const double gap = play * std::sin(angle);
  // Square to the flank the bed's upper edge comes out lower on the slide.
  const double flank = (deep - gap * std::cos(angle) - under) / std::sin(angle);
  station.truth.axial.push_back({bed, slide, gap, flank * length, false});
  station.truth.axial.push_back({bed, slide, gap, flank * length, false});
  station.truth.axial.push_back({bed, slide, under, 2.0 * slide_half(under) * length, false});
  return station;
}

}  // namespace spotblue::test
