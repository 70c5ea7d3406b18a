// Two equal journals either side of a collar, a bearing on each that may touch the collar.

#include <algorithm>

#include "support/families/family.hpp"

namespace spotblue::test {

Station two_journals(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"two journals", {}, {}, {}};
  const double journal = chance.size(10.0, 30.0);
  const double collar = journal + chance.size(6.0, 14.0);
  const double wide = chance.size(4.0, 12.0);
  const Finish a = shop.finish();
  const auto shaft = station.add("Collared shaft",
                                 turned({{0.0, -30.0},
                                         {journal / 2, -30.0},
                                         {journal / 2, 0.0},
                                         {collar / 2, 0.0},
                                         {collar / 2, wide},
                                         {journal / 2, wide},
                                         {journal / 2, wide + 30.0},
                                         {0.0, wide + 30.0}},
                                        a),
                                 a);
  for (const double side : {-1.0, 1.0}) {
    const double hole = journal + some_clearance(chance, journal);
    const double length = chance.size(8.0, 18.0);
    const double gap = face_gap(chance);
    const double outer = collar + chance.size(-2.0, 8.0);
    const double from = side < 0.0 ? -gap - length : wide + gap;
    const Finish b = shop.finish();
    const auto ring = station.add(side < 0.0 ? "Left ring" : "Right ring",
                                  turned(bar(hole, outer, 0.0, length), b), b, shift(0, 0, from));
    station.truth.radial.push_back(centred(ring, shaft, hole, journal, length));
    add_faces(station, ring, shaft, gap,
              ring_area(std::max(hole, journal), std::min(outer, collar)));
  }
  return station;
}

}  // namespace spotblue::test
