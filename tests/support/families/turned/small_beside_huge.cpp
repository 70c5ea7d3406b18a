// A pin of 0.3 mm at the end of a beam of 3 m, and a pad on it.

#include "support/families/family.hpp"

namespace spotblue::test {

Station small_beside_huge(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"small beside huge", {}, {}, {}};
  station.reach = 1510.0;
  const double pin = chance.size(0.29, 0.34);
  const double hole = pin + chance.size(0.002, 0.05);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const Finish c = shop.finish();
  const double x = 1500.0 - chance.size(4.0, 40.0);
  const auto beam = station.add(
      "Beam",
      block({.x = {-1500.0, 1500.0}, .y = {-30.0, 30.0}, .z = {-12.0, 0.0}}, {{x, 2.0, hole}}, a),
      a);
  const auto wire = station.add("Wire", turned(bar(0.0, pin, -15.0, 4.0), b), b, shift(x, 2.0, 0));
  station.truth.radial.push_back(centred(beam, wire, hole, pin, 12.0));
  const double gap = face_gap(chance);
  const auto pad = station.add("Pad", block({.x = {-9, 8}, .y = {-7, 6}, .z = {0, 5}}, {}, c), c,
                               shift(-1400.0, 1.0, gap));
  add_faces(station, beam, pad, gap, 17.0 * 13.0, false);
  return station;
}

}  // namespace spotblue::test
