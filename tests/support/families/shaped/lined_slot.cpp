// A tongue in a slot with a liner at either side: it bears on the liners, not on the slot.

#include <algorithm>

#include "support/families/family.hpp"

namespace spotblue::test {

Station lined_slot(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"lined slot", {}, {}, {}};
  const double slot = chance.size(14.0, 24.0);
  const double deep = chance.size(10.0, 16.0);
  const double behind = chance.in(0.5) ? 0.0 : chance.size(0.01, 0.1);
  const double beside = chance.size(0.01, 0.3);
  const double liner = chance.size(0.4, 2.5);
  const double tongue = slot - 2.0 * (behind + liner + beside);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const Finish c = shop.finish();
  const TopoDS_Shape solid =
      block({.x = {-30, 30}, .y = {-28, 28}, .z = {-deep - 8.0, 0.0}}, {}, {});
  const TopoDS_Shape mill =
      block({.x = {-31, 31}, .y = {-slot / 2, slot / 2}, .z = {-deep, 1.0}}, {}, {});
  const auto bed = station.add("Slot block", rewritten(cut(solid, mill), a), a);
  // Clear of the floor, longer than the tongue and as high as the slot.
  const double foot = 3.0 - deep;
  const auto left =
      station.add("Liner", block({.x = {-25, 25}, .y = {0.0, liner}, .z = {foot, 0.0}}, {}, b), b,
                  shift(0, slot / 2 - behind - liner, 0));
  const auto right = station.add_again(left, shift(0, behind - slot / 2, 0));
  const auto slide = station.add(
      "Tongue", block({.x = {-20, 20}, .y = {-tongue / 2, tongue / 2}, .z = {foot, 12.0}}, {}, c),
      c);
  for (const std::size_t one : {left, right}) {
    station.truth.axial.push_back({bed, one, behind, 50.0 * -foot, false});
    station.truth.axial.push_back({one, slide, beside, 40.0 * -foot, false});
  }
  return station;
}

}  // namespace spotblue::test
