// Stations that must not be taken for seats, and plain fouls.

#include <algorithm>
#include <array>
#include <cmath>

#include "support/station.hpp"

namespace spotblue::test {
namespace {

constexpr double kDegree = std::numbers::pi / 180.0;

struct Pair {
  std::size_t a = 0, b = 0;
};

Pair hub_and_bar(Station& station, Shop& shop, double hole, double shaft, double length,
                 double shaft_from, const gp_Trsf& at = gp_Trsf()) {
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const auto hub = station.add("Collar", turned(bar(hole, hole + 16.0, 0.0, length), a), a);
  const auto rod = station.add("Rod", turned(bar(0.0, shaft, shaft_from, length + 10.0), b), b, at);
  return {hub, rod};
}

Pair two_blocks(Station& station, Shop& shop, const BlockSize& upper, const gp_Trsf& at) {
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const auto low =
      station.add("Bed", block({.x = {-30, 30}, .y = {-25, 25}, .z = {-10, 0}}, {}, a), a);
  const auto high = station.add("Pad", block(upper, {}, b), b, at);
  return {low, high};
}

void too_loose(Station& station, Shop& shop) {
  const double hole = shop.sizes.size(12.0, 48.0);
  hub_and_bar(station, shop, hole, hole - 2.0 * shop.sizes.size(1.02, 1.6), 15.0, -10.0);
}

void off_axis(Station& station, Shop& shop) {
  const double hole = shop.sizes.size(12.0, 24.0);
  hub_and_bar(station, shop, hole, hole - 1.9, 15.0, -10.0,
              shift(shop.sizes.size(0.56, 0.9), 0, 0));
}

void too_tilted(Station& station, Shop& shop) {
  const double hole = shop.sizes.size(12.0, 24.0);
  hub_and_bar(
      station, shop, hole, hole - 1.8, 12.0, -10.0,
      shift(0, 0, 6.0) * turn(1, 0, 0, shop.sizes.between(1.1, 1.6) * kDegree) * shift(0, 0, -6.0));
}

void not_inside(Station& station, Shop& shop) {
  const double hole = shop.sizes.size(12.0, 24.0);
  hub_and_bar(station, shop, hole, hole - 0.02, 15.0, 18.0);
}

void side_by_side(Station& station, Shop& shop) {
  const double rod = shop.sizes.size(8.0, 16.0);
  const Finish a = shop.finish();
  const auto one = station.add("Roller", turned(bar(0.0, rod, 0.0, 40.0), a), a);
  station.add_again(one, shift(rod + shop.sizes.size(0.05, 0.6), 0, shop.sizes.size(0.0, 4.0)));
}

void faces_too_far(Station& station, Shop& shop) {
  two_blocks(station, shop, {.x = {-12, 12}, .y = {-9, 9}, .z = {0, 8}},
             shift(2, 1, shop.sizes.size(2.02, 2.45)));
}

void faces_tilted(Station& station, Shop& shop) {
  two_blocks(station, shop, {.x = {-12, 12}, .y = {-9, 9}, .z = {0, 8}},
             shift(0, 0, 0.8) * turn(0, 1, 0, shop.sizes.between(1.1, 1.6) * kDegree));
}

void faces_beside(Station& station, Shop& shop) {
  two_blocks(station, shop, {.x = {30.4, 50}, .y = {-9, 9}, .z = {0, 8}},
             shift(0, 0, shop.sizes.size(0.1, 0.5)));
}

// Something covers all of what two plates would show one another.
void faces_parted(Station& station, Shop& shop) {
  const double leaf = shop.sizes.size(0.3, 0.8);
  const double below = shop.sizes.size(0.05, 0.4);
  const double above = shop.sizes.size(0.05, 0.4);
  const auto [low, high] = two_blocks(station, shop, {.x = {-12, 12}, .y = {-9, 9}, .z = {0, 8}},
                                      shift(0, 0, below + leaf + above));
  const Finish c = shop.finish();
  const auto part =
      station.add("Gasket", block({.x = {-15, 14}, .y = {-10, 12}, .z = {0, leaf}}, {}, c), c,
                  shift(0, 0, below));
  station.truth.axial.push_back({low, part, below, 29.0 * 22.0, false});
  station.truth.axial.push_back({part, high, above, 24.0 * 18.0, false});
}

// A cone in a plain bore: near everywhere, yet no seat.
void cone_in_bore(Station& station, Shop& shop) {
  const double hole = shop.sizes.size(20.0, 40.0);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  station.add("Collar", turned(bar(hole, hole + 16.0, 0.0, 14.0), a), a);
  station.add("Cone",
              turned({{0.0, -5.0}, {hole / 2 - 0.3, -5.0}, {hole / 2 - 0.9, 20.0}, {0.0, 20.0}}, b),
              b);
}

void faces_too_deep(Station& station, Shop& shop) {
  const double depth = shop.sizes.size(1.05, 1.9);
  const auto [low, high] =
      two_blocks(station, shop, {.x = {-12, 12}, .y = {-9, 9}, .z = {0, 8}}, shift(3, -2, -depth));
  station.truth.fouls.push_back({low, high, 24.0 * 18.0 * depth, depth});
}

void press_too_tight(Station& station, Shop& shop) {
  // Sizes that belong to no screw, so that the pair is no thread.
  constexpr std::array<double, 3> kShafts{34.2, 43.6, 46.6};
  const double shaft = kShafts[shop.sizes.below(kShafts.size())];
  const double hole = shaft - 2.0 * shop.sizes.size(0.3, 0.8);
  const auto [hub, rod] = hub_and_bar(station, shop, hole, shaft, 15.0, -10.0);
  station.truth.fouls.push_back(
      {hub, rod, ring_area(hole, shaft) * 15.0, 0.0});  // which way is out?
}

}  // namespace

Station decoy(Shop& shop) {
  using Make = void (*)(Station&, Shop&);
  constexpr std::array<Make, 12> kMakes{
      too_loose,    off_axis,     too_tilted,   not_inside,   side_by_side,   faces_too_far,
      faces_tilted, faces_beside, faces_parted, cone_in_bore, faces_too_deep, press_too_tight};
  constexpr std::array<const char*, 12> kNames{"too loose",    "off axis",       "too tilted",
                                               "not inside",   "side by side",   "faces too far",
                                               "faces tilted", "faces beside",   "faces parted",
                                               "cone in bore", "faces too deep", "press too tight"};
  const std::size_t which = shop.sizes.below(kMakes.size());
  Station station{kNames[which], {}, {}, {}};
  kMakes[which](station, shop);
  return station;
}

Station block_foul(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"block foul", {}, {}, {}};
  const double x = chance.size(1.2, 8.0);
  const double y = chance.size(1.2, 8.0);
  const double z = chance.size(1.2, 8.0);
  const double draw = chance.between(0.0, 1.0);
  if (draw < 0.4) {  // corner in corner
    const auto [low, high] = two_blocks(
        station, shop, {.x = {30.0 - x, 50}, .y = {25.0 - y, 45}, .z = {0, 20}}, shift(0, 0, -z));
    station.truth.fouls.push_back({low, high, x * y * z, std::min({x, y, z})});
  } else if (draw < 0.7) {  // a post driven into a block
    const Finish a = shop.finish();
    const Finish b = shop.finish();
    const auto low =
        station.add("Bed", block({.x = {-30, 30}, .y = {-25, 25}, .z = {-20, 0}}, {}, a), a);
    const double post = 4.0 + x;
    const auto high = station.add("Post", turned(bar(0.0, post, 0.0, 30.0), b), b, shift(2, 3, -z));
    station.truth.fouls.push_back({low, high, ring_area(0.0, post) * z, std::min(z, post)});
  } else {  // a block wholly inside another
    const auto [low, high] =
        two_blocks(station, shop, {.x = {-x / 2, x / 2}, .y = {-y / 2, y / 2}, .z = {-3.2, 0.8}},
                   shift(5, 4, -4.0));
    station.truth.fouls.push_back({low, high, x * y * 4.0, 0.0});
  }
  return station;
}

}  // namespace spotblue::test
