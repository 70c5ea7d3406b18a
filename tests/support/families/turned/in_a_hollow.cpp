// A part inside a closed hollow of another: it rattles, or it fits there as in any hole.

#include "support/families/family.hpp"

namespace spotblue::test {

Station in_a_hollow(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"in a hollow", {}, {}, {}};
  const double hollow = chance.size(16.0, 36.0);
  const double length = chance.size(16.0, 30.0);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const bool round = chance.in(0.5);
  const double half = hollow / 2 + 7.0;
  const TopoDS_Shape outside =
      round ? turned(bar(0.0, 2.0 * half, -6.0, length + 6.0), before_cutting(a))
            : block({.x = {-half, half}, .y = {-half, half}, .z = {-6.0, length + 6.0}}, {}, {});
  const TopoDS_Shape inside = turned(bar(0.0, hollow, 0.0, length), before_cutting(a));
  const auto can = station.add("Can", rewritten(cut(outside, inside), a), a);
  if (chance.in(0.3)) {
    const double loose = hollow - chance.size(6.0, 8.0);
    station.add("Loose slug", turned(bar(0.0, loose, 0.0, length - 6.0), b), b, shift(0, 0, 3.0));
    return station;
  }
  const double slug = hollow - chance.size(0.01, 1.8);
  const double below = face_gap(chance);
  const double above = face_gap(chance);
  const double high = length - below - above;
  const auto core =
      station.add("Slug", turned(bar(0.0, slug, 0.0, high), b), b, shift(0, 0, below));
  station.truth.radial.push_back(centred(can, core, hollow, slug, high));
  add_faces(station, can, core, below, ring_area(0.0, slug));
  add_faces(station, can, core, above, ring_area(0.0, slug));
  return station;
}

}  // namespace spotblue::test
