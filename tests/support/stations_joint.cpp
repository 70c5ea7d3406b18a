// Stations of joints: keys in keyseats, screws in tapped holes, tongues in forks.

#include <algorithm>
#include <array>
#include <cmath>

#include "support/station.hpp"

namespace spotblue::test {
namespace {

// Key sections by shaft diameter; sizes as DIN 6885-1 has them, from memory. Only plausible form
// matters here: the truth follows from whatever is drawn.
struct KeySection {
  double up_to = 0.0, width = 0.0, height = 0.0, in_shaft = 0.0;
};
constexpr std::array<KeySection, 6> kKeys{
    {{.up_to = 17, .width = 5, .height = 5, .in_shaft = 3.0},
     {.up_to = 22, .width = 6, .height = 6, .in_shaft = 3.5},
     {.up_to = 30, .width = 8, .height = 7, .in_shaft = 4.0},
     {.up_to = 38, .width = 10, .height = 8, .in_shaft = 5.0},
     {.up_to = 44, .width = 12, .height = 8, .in_shaft = 5.0},
     {.up_to = 51, .width = 14, .height = 9, .in_shaft = 5.5}}};

// A keyseat's cutter: straight between two ends, rounded by half its width beyond them.
TopoDS_Shape keyseat(double width, double floor, double top, double from, double to) {
  TopoDS_Shape tool =
      block({.x = {-width / 2, width / 2}, .y = {floor, top}, .z = {from, to}}, {}, {});
  for (const double end : {from, to}) {
    const TopoDS_Shape round = turned(bar(0.0, width, 0.0, top - floor), {});
    tool = fuse(tool, moved(round, shift(0, floor, end) * turn(1, 0, 0, -std::numbers::pi / 2)));
  }
  return tool;
}

// Tapped holes: coarse pitch and tap drill by nominal size. ISO 261 pitches and common practice
// drills, from memory.
struct Tapped {
  double size = 0.0, pitch = 0.0, drill = 0.0, clearance = 0.0, flats = 0.0;
};
constexpr std::array<Tapped, 9> kTapped{
    {{.size = 3, .pitch = 0.5, .drill = 2.5, .clearance = 3.4, .flats = 5.5},
     {.size = 4, .pitch = 0.7, .drill = 3.3, .clearance = 4.5, .flats = 7},
     {.size = 5, .pitch = 0.8, .drill = 4.2, .clearance = 5.5, .flats = 8},
     {.size = 6, .pitch = 1.0, .drill = 5.0, .clearance = 6.6, .flats = 10},
     {.size = 8, .pitch = 1.25, .drill = 6.8, .clearance = 9.0, .flats = 13},
     {.size = 10, .pitch = 1.5, .drill = 8.5, .clearance = 11.0, .flats = 16},
     {.size = 12, .pitch = 1.75, .drill = 10.2, .clearance = 13.5, .flats = 18},
     {.size = 16, .pitch = 2.0, .drill = 14.0, .clearance = 17.5, .flats = 24},
     {.size = 20, .pitch = 2.5, .drill = 17.5, .clearance = 21.0, .flats = 30}}};

struct ScrewJoint {
  Tapped thread;
  double hole = 0.0, pitch_half = 0.0, cover = 0.0, gap = 0.0, head_gap = 0.0, depth = 0.0;
  double head = 0.0, tip = 0.0;
  bool socket = false;
};

TopoDS_Shape drilled_base(const ScrewJoint& j, const std::vector<Drilled>& spots, double half,
                          bool pointed, const Finish& finish) {
  const double deep = j.depth + 4.0;
  TopoDS_Shape base =
      block({.x = {-half, half}, .y = {-half, half}, .z = {-deep - 12.0, 0.0}}, {}, {});
  const double r = j.hole / 2;
  const double point = pointed ? r / std::tan(59.0 * std::numbers::pi / 180.0) : 0.0;
  const Section drill = pointed ? Section{{0.0, -deep - point}, {r, -deep}, {r, 5.0}, {0.0, 5.0}}
                                : Section{{0.0, -deep}, {r, -deep}, {r, 5.0}, {0.0, 5.0}};
  for (const Drilled& spot : spots) {
    base = cut(base,
               moved(turned(drill, {finish.seam, Surfaces::analytic}), shift(spot.x, spot.y, 0)));
  }
  return rewritten(base, finish);
}

TopoDS_Shape screw(const ScrewJoint& j, const Finish& finish) {
  const double r = j.thread.size / 2;
  const double under = j.gap + j.cover + j.head_gap;
  const double low = -j.depth;
  const double high = under + 0.7 * j.thread.size;
  const Section with_head{{0.0, low},          {r - j.tip, low},   {r, low + j.tip}, {r, under},
                          {j.head / 2, under}, {j.head / 2, high}, {0.0, high}};
  if (j.socket) {
    return turned(with_head, finish);
  }
  const Section shank{{0.0, low}, {r - j.tip, low}, {r, low + j.tip}, {r, high}, {0.0, high}};
  return rewritten(
      fuse(turned(shank, before_cutting(finish)), hexagon(j.thread.flats, under, high)), finish);
}

struct KeyedSizes {
  double shaft = 0.0, bore = 0.0, outer = 0.0, length = 0.0;
  double width = 0.0, height = 0.0, in_shaft = 0.0, in_hub = 0.0, aside = 0.0;
  double floor = 0.0, under = 0.0, over = 0.0, top = 0.0;
  bool along = false;  // the keyseat is longer than the hub
  double from = 0.0, to = 0.0, key_from = 0.0;
};

KeyedSizes keyed_sizes(Chance& chance) {
  KeyedSizes s;
  s.shaft = chance.size(14.0, 50.0);
  const double draw = some_clearance(chance, s.shaft);
  s.bore = s.shaft + std::clamp(draw, -0.03, 0.3);
  const KeySection section = *std::find_if(kKeys.begin(), kKeys.end(),
                                           [&](const KeySection& k) { return s.shaft <= k.up_to; });
  s.width = section.width;
  s.height = section.height;
  s.length = chance.size(2.5 * s.width + 14.0, 2.5 * s.width + 26.0);
  s.outer = s.bore + chance.size(16.0, 30.0) + section.height;
  const double tight = chance.between(0.0, 1.0);
  s.in_shaft = s.width + (tight < 0.25 ? -0.008 : tight < 0.5 ? 0.0 : chance.size(0.005, 0.06));
  s.in_hub = s.width + chance.size(0.01, 0.1);
  // No farther aside than the tighter of the two slots lets the key go.
  const double room = std::max(0.0, std::min(s.in_shaft, s.in_hub) - s.width) / 2;
  s.aside = room * chance.between(0.0, 0.9);
  s.floor = s.shaft / 2 - section.in_shaft;
  s.under = chance.in(0.5) ? 0.0 : chance.size(0.02, 0.2);
  s.over = chance.size(0.1, 0.5);
  s.top = s.floor + s.under + section.height;
  s.along = chance.in(0.5);
  s.from = s.along ? -3.0 : std::max(s.width / 2 + 2.0, 0.25 * s.length);
  s.to = s.length - s.from;
  s.key_from = s.along ? 2.0 : s.from + 0.5;
  return s;
}

ScrewJoint screw_joint(Chance& chance) {
  ScrewJoint j;
  j.thread = kTapped[chance.below(kTapped.size())];
  const double minor = j.thread.size - 1.0825 * j.thread.pitch;  // ISO 724, from memory
  j.hole = chance.in(0.6) ? j.thread.drill : std::round(minor * 1000.0) / 1000.0;
  j.cover = chance.size(4.0, 12.0);
  j.gap = chance.in(0.5) ? 0.0 : chance.size(0.05, 1.8);
  j.head_gap = chance.in(0.7) ? 0.0 : chance.size(0.05, 1.0);
  j.depth = chance.size(0.8, 2.0) * j.thread.size;
  j.socket = chance.in(0.5);
  j.head = 1.5 * j.thread.size;
  j.tip = chance.in(0.5) ? 0.0 : 0.12 * j.thread.size;
  return j;
}

}  // namespace

Station keyed(Shop& shop) {
  Station station{"keyed", {}, {}, {}};
  const KeyedSizes s = keyed_sizes(shop.sizes);
  const double key = s.length - s.key_from - s.key_from;
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const Finish c = shop.finish();
  const TopoDS_Shape broach = block(
      {.x = {-s.in_hub / 2, s.in_hub / 2}, .y = {0.0, s.top + s.over}, .z = {-1.0, s.length + 1.0}},
      {}, {});
  const auto hub = station.add(
      "Keyed hub",
      rewritten(cut(turned(bar(s.bore, s.outer, 0.0, s.length), before_cutting(a)), broach), a), a);
  const double past = std::max(10.0, s.width / 2 + 6.0);
  const auto bar_ = station.add(
      "Keyed shaft",
      rewritten(cut(turned(bar(0.0, s.shaft, -past, s.length + past), before_cutting(b)),
                    keyseat(s.in_shaft, s.floor, s.shaft, s.from, s.to)),
                b),
      b);
  const auto feather = station.add(
      "Key",
      block({.x = {-s.width / 2, s.width / 2}, .y = {0.0, s.height}, .z = {0.0, key}}, {}, c), c,
      shift(s.aside, s.floor + s.under, s.key_from));

  TrueRadial seat = centred(hub, bar_, s.bore, s.shaft, s.length);
  const double lost_hub = 2.0 * std::asin(s.in_hub / s.bore);
  const double lost_shaft = 2.0 * std::asin(s.in_shaft / s.shaft);
  seat.coverage = kFullTurn - (s.along ? std::max(lost_hub, lost_shaft) : lost_hub);
  station.truth.radial.push_back(seat);
  const double shaft_edge = std::sqrt(s.shaft * s.shaft - s.in_shaft * s.in_shaft) / 2;
  const double hub_edge = std::sqrt(s.bore * s.bore - s.in_hub * s.in_hub) / 2;
  station.truth.width.push_back(
      {bar_, feather, s.in_shaft, s.width, s.aside, key * (shaft_edge - s.floor - s.under)});
  station.truth.width.push_back(
      {hub, feather, s.in_hub, s.width, s.aside, key * (s.top - hub_edge)});
  station.truth.axial.push_back(
      {bar_, feather, s.under, key * std::min(s.width, s.in_shaft), false});
  station.truth.axial.push_back({feather, hub, s.over, key * s.width, false});
  return station;
}

Station screwed(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"screwed", {}, {}, {}};
  const ScrewJoint j = screw_joint(chance);
  const double apart = j.thread.size * 1.8;
  const double half = apart + 1.8 * j.thread.size;
  std::vector<Drilled> spots{{apart, apart, j.hole}, {-apart, -apart, j.hole}};
  if (chance.in(0.4)) {
    spots.push_back({-apart, apart, j.hole});
    spots.push_back({apart, -apart, j.hole});
  }
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const Finish c = shop.finish();
  const auto base = station.add("Base", drilled_base(j, spots, half, chance.in(0.5), a), a);
  std::vector<Drilled> clear = spots;
  for (Drilled& hole : clear) {
    hole.diameter = j.thread.clearance;
  }
  const auto cover = station.add(
      "Cover", block({.x = {-half, half}, .y = {-half, half}, .z = {0.0, j.cover}}, clear, b), b,
      shift(0, 0, j.gap));
  const TopoDS_Shape one = screw(j, c);
  std::size_t first = 0;
  const double head_area = j.socket ? ring_area(j.thread.clearance, j.head)
                                    : std::sqrt(3.0) / 2.0 * j.thread.flats * j.thread.flats -
                                          ring_area(0.0, j.thread.clearance);
  for (std::size_t i = 0; i < spots.size(); ++i) {
    const gp_Trsf at = shift(spots[i].x, spots[i].y, 0);
    const auto here = i == 0 ? station.add("Screw", one, c, at) : station.add_again(first, at);
    first = i == 0 ? here : first;
    const int nominal = static_cast<int>(j.thread.size);
    station.truth.threads.push_back({base, here, std::string("M").append(std::to_string(nominal)),
                                     j.hole, j.thread.size, j.depth - j.tip});
    station.truth.radial.push_back(
        centred(cover, here, j.thread.clearance, j.thread.size, j.cover));
    station.truth.axial.push_back({cover, here, j.head_gap, head_area, true});
  }
  const double faces =
      4.0 * half * half - static_cast<double>(spots.size()) * ring_area(0.0, j.thread.clearance);
  TrueAxial seat{base, cover, j.gap, faces, true};
  station.truth.axial.push_back(seat);
  return station;
}

Station fork(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"fork", {}, {}, {}};
  const double cheek = chance.size(5.0, 10.0);
  const double slot = chance.size(12.0, 24.0);
  const double slack = chance.size(0.05, 0.4);
  const double tongue = slot - slack;
  const double aside = slack / 2 * chance.sign() * chance.between(0.1, 0.9);
  const double pin = chance.size(6.0, 14.0);
  const double in_fork = pin + chance.size(0.005, 0.2);
  const double in_link = pin + chance.size(0.005, 0.2);
  const double half = pin + chance.size(6.0, 10.0);
  const double link_half = half - chance.size(1.0, 3.0);
  const double all = 2 * cheek + slot;
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const Finish c = shop.finish();
  const double base = half + 12.0;
  const TopoDS_Shape solid = block({.x = {-half, half}, .y = {-base, half}, .z = {0.0, all}},
                                   {{0, 0, in_fork}}, before_cutting(a));
  const TopoDS_Shape mill =
      block({.x = {-half - 1, half + 1}, .y = {-base + 8.0, half + 1}, .z = {cheek, cheek + slot}},
            {}, {});
  const auto cheeks = station.add("Fork", rewritten(cut(solid, mill), a), a);
  const double from = cheek + slack / 2 + aside;
  const auto link =
      station.add("Link",
                  block({.x = {-link_half, link_half}, .y = {-half, 2 * half}, .z = {0.0, tongue}},
                        {{0, 0, in_link}}, b),
                  b, shift(0, 0, from));
  const auto bolt = station.add("Pin", turned(bar(0.0, pin, -6.0, all + 6.0), c), c);
  station.truth.radial.push_back(centred(cheeks, bolt, in_fork, pin, 2 * cheek));
  station.truth.radial.push_back(centred(link, bolt, in_link, pin, tongue));
  const double area = 2 * link_half * 2 * half - ring_area(0.0, std::max(in_fork, in_link));
  // Faces square to the pin's centre line: their gaps are end play, so axial seats, not a width.
  station.truth.axial.push_back({cheeks, link, slack / 2 + aside, area, true});
  station.truth.axial.push_back({cheeks, link, slack / 2 - aside, area, true});
  return station;
}

Station tongue(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"tongue", {}, {}, {}};
  const double slot = chance.size(6.0, 20.0);
  const double tight = chance.between(0.0, 1.0);
  const double slack = tight < 0.2 ? -0.008 : tight < 0.4 ? 0.0 : chance.size(0.01, 0.3);
  const double key = slot - slack;
  const double aside = std::max(0.0, slack) / 2 * chance.between(0.0, 0.9);
  const double under = chance.in(0.4) ? 0.0 : chance.size(0.05, 1.5);
  const double deep = chance.size(5.0, 9.0);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const TopoDS_Shape solid =
      block({.x = {-30, 30}, .y = {-25, 25}, .z = {-deep - 8.0, 0.0}}, {}, {});
  const TopoDS_Shape mill =
      block({.x = {-31, 31}, .y = {-slot / 2, slot / 2}, .z = {-deep, 1.0}}, {}, {});
  const auto bed = station.add("Slotted bed", rewritten(cut(solid, mill), a), a);
  const auto slide = station.add(
      "Tongue",
      block({.x = {-20, 25}, .y = {aside - key / 2, aside + key / 2}, .z = {under - deep, 15.0}},
            {}, b),
      b);
  station.truth.width.push_back({bed, slide, slot, key, aside, 45.0 * (deep - under)});
  station.truth.axial.push_back({bed, slide, under, 45.0 * std::min(slot, key), false});
  return station;
}

}  // namespace spotblue::test
