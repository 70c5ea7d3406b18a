// A cylinder-head screw in its counterbore: thread, shank, head's side and head's underside.

#include <algorithm>
#include <array>
#include <string>

#include "support/families/family.hpp"

namespace spotblue::test {
namespace {

// Size, tap drill, clearance hole, head; common practice, no source. Truth follows what is drawn.
struct HeadScrew {
  int size = 0;
  double drill = 0.0, clear = 0.0, head = 0.0;
};
constexpr std::array<HeadScrew, 5> kScrews{
    {{.size = 4, .drill = 3.3, .clear = 4.5, .head = 7.0},
     {.size = 5, .drill = 4.2, .clear = 5.5, .head = 8.5},
     {.size = 6, .drill = 5.0, .clear = 6.6, .head = 10.0},
     {.size = 8, .drill = 6.8, .clear = 9.0, .head = 13.0},
     {.size = 10, .drill = 8.5, .clear = 11.0, .head = 16.0}}};

TopoDS_Shape cap_screw(const HeadScrew& s, double depth, double under, const Finish& finish) {
  const double size = s.size;
  return turned({{0.0, -depth},
                 {size / 2, -depth},
                 {size / 2, under},
                 {s.head / 2, under},
                 {s.head / 2, under + size},
                 {0.0, under + size}},
                finish);
}

}  // namespace

Station counterbore(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"counterbore", {}, {}, {}};
  const HeadScrew s = kScrews[chance.below(kScrews.size())];
  const double size = s.size;
  const double sunk = size + chance.size(0.2, 3.0);
  const double floor = chance.size(4.0, 10.0);  // plate left under the head
  const double wide = s.head + chance.size(0.1, 1.6);
  const double gap = face_gap(chance);
  const double lift = chance.in(0.6) ? 0.0 : chance.size(0.02, 0.6);
  const double depth = size * chance.between(1.0, 2.0);
  const double half = wide / 2 + 8.0;
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const Finish c = shop.finish();
  const auto base =
      station.add("Base",
                  block({.x = {-half, half}, .y = {-half, half}, .z = {-depth - 12.0, 0.0}},
                        {{0, 0, s.drill}}, a),
                  a);
  const TopoDS_Shape slab =
      block({.x = {-half, half}, .y = {-half, half}, .z = {0.0, floor + sunk}}, {{0, 0, s.clear}},
            before_cutting(b));
  const TopoDS_Shape mill = turned(bar(0.0, wide, floor, floor + sunk + 1.0), before_cutting(b));
  const auto plate =
      station.add("Counterbored plate", rewritten(cut(slab, mill), b), b, shift(0, 0, gap));
  const double under = gap + floor + lift;
  const auto screw = station.add("Cap screw", cap_screw(s, depth, under, c), c);
  station.truth.threads.push_back(
      {base, screw, "M" + std::to_string(s.size), s.drill, size, depth});
  station.truth.radial.push_back(centred(plate, screw, s.clear, size, floor));
  station.truth.radial.push_back(
      centred(plate, screw, wide, s.head, shared(0.0, sunk, lift, lift + size)));
  station.truth.axial.push_back({plate, screw, lift, ring_area(s.clear, s.head), true});
  station.truth.axial.push_back(
      {base, plate, gap, 4.0 * half * half - ring_area(0.0, s.clear), true});
  return station;
}

}  // namespace spotblue::test
