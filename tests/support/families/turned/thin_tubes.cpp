// Two thin tubes in one another whose inner bore and outer diameter are those of a tapped hole and
// its screw: a seat between them, and no thread, since neither has metal there.

#include <array>

#include "support/families/family.hpp"

namespace spotblue::test {

Station thin_tubes(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"thin tubes", {}, {}, {}};
  struct Sizes {
    double drill = 0.0, thread = 0.0;
  };
  constexpr std::array<Sizes, 4> kSizes{{{8.5, 10.0}, {10.2, 12.0}, {14.0, 16.0}, {17.5, 20.0}}};
  const Sizes s = kSizes[chance.below(kSizes.size())];
  const double inner = s.drill + 2.0 * chance.size(0.2, 0.3);
  const double outer = s.thread - 2.0 * chance.size(0.2, 0.3);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const auto in = station.add("Inner tube", turned(bar(s.drill, inner, 0.0, 30.0), a), a);
  const auto out = station.add("Outer tube", turned(bar(outer, s.thread, 4.0, 24.0), b), b);
  station.truth.radial.push_back(centred(out, in, outer, inner, 20.0));
  return station;
}

}  // namespace spotblue::test
