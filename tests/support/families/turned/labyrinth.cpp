// A labyrinth: a stator's fins between a rotor's rings, each running close to the other part.

#include "support/families/family.hpp"

namespace spotblue::test {

Station labyrinth(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"labyrinth", {}, {}, {}};
  constexpr double kPitch = 10.0;
  constexpr int kFins = 3;
  const double fin = chance.size(16.0, 30.0);
  const double bore = fin + 2.0 * chance.size(3.0, 5.0);
  const double root = fin - 2.0 * chance.size(0.05, 0.8);
  const double ring = bore - 2.0 * chance.size(0.05, 0.8);
  const double wide = chance.size(0.8, 2.4);
  Section stator{
      {bore / 2, -4.0}, {bore / 2 + 8.0, -4.0}, {bore / 2 + 8.0, 34.0}, {bore / 2, 34.0}};
  Section rotor{{0.0, -14.0}, {root / 2, -14.0}};
  for (int i = 0; i < kFins; ++i) {
    const double z = kPitch * (kFins - 1 - i);  // the stator's section comes down inside
    stator.insert(stator.end(),
                  {{bore / 2, z + wide}, {fin / 2, z + wide}, {fin / 2, z}, {bore / 2, z}});
    const double at = kPitch * i + kPitch / 2;
    rotor.insert(rotor.end(),
                 {{root / 2, at}, {ring / 2, at}, {ring / 2, at + wide}, {root / 2, at + wide}});
  }
  rotor.insert(rotor.end(), {{root / 2, 44.0}, {0.0, 44.0}});
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const auto outside = station.add("Stator", turned(stator, a), a);
  const auto inside = station.add("Rotor", turned(rotor, b), b);
  // A fin parts the bore into lands, and a ring the root into journals: each is met once.
  for (int i = 0; i < kFins; ++i) {
    station.truth.radial.push_back(centred(outside, inside, fin, root, wide));
    station.truth.radial.push_back(centred(outside, inside, bore, ring, wide));
  }
  return station;
}

}  // namespace spotblue::test
