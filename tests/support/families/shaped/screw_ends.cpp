// Where a thread ends: a screw that runs on into a plain hole it does not pass, and one that has
// not begun a whole turn.

#include <algorithm>
#include <array>
#include <string>

#include "support/families/family.hpp"

namespace spotblue::test {
namespace {

// Coarse threads with tap drills; ISO 261 pitches, drills by common practice, no source.
struct Coarse {
  int size = 0;
  double pitch = 0.0, drill = 0.0;
};
constexpr std::array<Coarse, 5> kCoarse{
    {{6, 1.0, 5.0}, {8, 1.25, 6.8}, {10, 1.5, 8.5}, {12, 1.75, 10.2}, {16, 2.0, 14.0}}};

std::string name_of(const Coarse& thread) { return "M" + std::to_string(thread.size); }

}  // namespace

Station screw_runs_on(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"screw runs on", {}, {}, {}};
  const Coarse t = kCoarse[chance.below(kCoarse.size())];
  const double plain = t.size - 0.4;
  const double past = chance.in(0.5) ? -1.0 : 4.0 * t.pitch;  // into the plain hole
  const double outer = t.size + 14.0;
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const auto nut = station.add("Stepped hole",
                               turned({{plain / 2, -16.0},
                                       {outer / 2, -16.0},
                                       {outer / 2, 14.0},
                                       {t.drill / 2, 14.0},
                                       {t.drill / 2, 0.0},
                                       {plain / 2, 0.0}},
                                      a),
                               a);
  const double size = t.size;
  const auto screw = station.add("Long screw", turned(bar(0.0, size, -past, 24.0), b), b);
  station.truth.threads.push_back(
      {nut, screw, name_of(t), t.drill, size, shared(0.0, 14.0, -past, 24.0)});
  if (past > 0.0) {
    station.truth.fouls.push_back({nut, screw, {}, 0.0});
  }
  return station;
}

Station screw_begins(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"screw begins", {}, {}, {}};
  const Coarse t = kCoarse[chance.below(kCoarse.size())];
  const bool holds = chance.in(0.5);
  const double deep = t.pitch * (holds ? chance.between(1.1, 3.0) : chance.between(0.2, 0.9));
  const double outer = t.size + 14.0;
  const double size = t.size;
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const auto nut = station.add("Tapped ring", turned(bar(t.drill, outer, 0.0, 12.0), a), a);
  const auto screw = station.add("Screw", turned(bar(0.0, size, 12.0 - deep, 30.0), b), b);
  if (holds) {
    station.truth.threads.push_back({nut, screw, name_of(t), t.drill, size, deep});
  } else if (deep <= 1.0) {  // no deeper than faces that have sunk into one another
    add_faces(station, nut, screw, -deep, ring_area(t.drill, size));
    // A ring of metal in metal is no deeper than it is thick.
    TrueFoul& ring = station.truth.fouls.back();
    ring.depth = std::min(ring.depth, 0.5 * (size - t.drill));
  } else {
    station.truth.fouls.push_back({nut, screw, ring_area(t.drill, size) * deep, 0.0});
  }
  return station;
}

}  // namespace spotblue::test
