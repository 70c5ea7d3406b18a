// Stations of faces against one another: flanged stacks, shoulders, rings in grooves.

#include <algorithm>
#include <cmath>

#include "support/station.hpp"

namespace spotblue::test {
namespace {

// Area of a strip of width w that starts at the centre, within radius r.
double strip(double w, double r) {
  return w / 2 * std::sqrt(r * r - w * w / 4) + r * r * std::asin(w / (2 * r));
}

struct FlangedSizes {
  double length = 0, hole = 0, chamfer = 0, bush = 0, bore = 0, shaft = 0, flange = 0, thick = 0;
  double bush_low = 0, bush_fillet = 0, washer_in = 0, washer_out = 0, washer_thick = 0;
  double shoulder = 0, shaft_fillet = 0;
  double gap_flange = 0, gap_washer = 0, gap_shoulder = 0;

  // Heights: under the flange, on top of it, under the washer, under the shaft's shoulder.
  [[nodiscard]] double under() const { return length + gap_flange; }
  [[nodiscard]] double top() const { return under() + thick; }
  [[nodiscard]] double washer() const { return top() + gap_washer; }
  [[nodiscard]] double step() const { return washer() + washer_thick + gap_shoulder; }
};

FlangedSizes flanged_sizes(Chance& chance) {
  FlangedSizes s;
  s.length = chance.size(14.0, 30.0);
  s.hole = chance.size(18.0, 40.0);
  s.gap_flange = face_gap(chance);
  s.gap_washer = face_gap(chance);
  s.gap_shoulder = face_gap(chance);
  const bool thin = chance.in(0.35);
  const double foul = chance.between(0.0, 1.0);
  const double depth = -chance.size(0.01, 0.5);
  double clearance = std::min(0.2, some_clearance(chance, s.hole));
  if (!thin && foul < 0.3) {
    (foul < 0.1 ? s.gap_flange : foul < 0.2 ? s.gap_washer : s.gap_shoulder) = depth;
    clearance = foul < 0.1 ? std::abs(clearance) : clearance;
  }
  s.chamfer = chance.in(0.5) && s.gap_flange >= 0.0 ? chance.size(0.5, 1.5) : 0.0;
  s.bush_fillet = s.chamfer > 0.0 && chance.in(0.6) ? s.chamfer * 0.5 : 0.0;
  s.bush = s.hole - clearance;
  s.bore = s.bush - 2.0 * chance.size(2.0, 4.0);
  s.shaft = s.bore - chance.size(0.005, 0.12);
  s.flange = s.hole + chance.size(12.0, 18.0);
  s.thick = chance.size(3.0, 6.0);
  s.bush_low = chance.in(0.3)   ? 0.0
               : chance.in(0.5) ? chance.size(2.0, 4.0)
                                : -chance.size(1.0, 4.0);
  s.washer_in = s.shaft + (chance.in(0.7) ? chance.size(0.4, 1.8) : chance.size(2.4, 3.0));
  s.washer_out = s.washer_in + chance.size(6.0, 9.0);
  s.washer_thick = thin ? chance.size(0.3, 0.9) : chance.size(3.0, 5.0);
  s.shoulder = s.washer_in + chance.size(4.0, 10.0);
  if (chance.in(0.4) && s.gap_shoulder >= 0.0 && s.washer_thick > 1.0) {
    s.shaft_fillet = 0.6 * (s.washer_in - s.shaft) / 2;
  }
  return s;
}

// Past a thin washer the flange and the shoulder see each other.
void add_past_washer(Station& station, const FlangedSizes& s, std::size_t bush, std::size_t shaft) {
  const double gap = s.gap_washer + s.washer_thick + s.gap_shoulder;
  const double area = ring_area(std::max(s.bore, s.shaft + 2 * s.shaft_fillet), s.washer_in) +
                      ring_area(s.washer_out, std::min(s.flange, s.shoulder));
  if (gap <= 2.0 && area > 0.0) {
    station.truth.axial.push_back({bush, shaft, gap, area, true});
  }
}

struct FlangedParts {
  std::size_t housing = 0, bush = 0, shaft = 0, disc = 0;
};

FlangedParts add_flanged_parts(Station& station, Shop& shop, const FlangedSizes& s) {
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const Finish c = shop.finish();
  const Finish d = shop.finish();
  FlangedParts parts;
  const double half = s.flange / 2 + shop.sizes.size(4.0, 8.0);
  parts.housing = station.add(
      "Housing",
      s.chamfer > 0.0 ? turned(chamfered_ring(s.hole, 2 * half, 0.0, s.length, s.chamfer), a)
                      : block({.x = {-half, half}, .y = {-half, half}, .z = {0.0, s.length}},
                              {{0, 0, s.hole}}, a),
      a);
  parts.bush = station.add("Flanged bush",
                           turned({{s.bore / 2, s.bush_low},
                                   {s.bush / 2, s.bush_low},
                                   {s.bush / 2, s.under(), s.bush_fillet},
                                   {s.flange / 2, s.under()},
                                   {s.flange / 2, s.top()},
                                   {s.bore / 2, s.top()}},
                                  b),
                           b);
  parts.shaft = station.add("Stepped shaft",
                            turned({{0.0, -20.0},
                                    {s.shaft / 2, -20.0},
                                    {s.shaft / 2, s.step(), s.shaft_fillet},
                                    {s.shoulder / 2, s.step()},
                                    {s.shoulder / 2, s.step() + 8.0},
                                    {0.0, s.step() + 8.0}},
                                   c),
                            c);
  parts.disc = station.add("Washer", turned(bar(s.washer_in, s.washer_out, 0.0, s.washer_thick), d),
                           d, shift(0, 0, s.washer()));
  return parts;
}

void add_flanged_rounds(Station& station, const FlangedSizes& s, const FlangedParts& parts) {
  auto& radial = station.truth.radial;
  radial.push_back(
      centred(parts.housing, parts.bush, s.hole, s.bush,
              shared(s.chamfer, s.length - s.chamfer, s.bush_low, s.under() - s.bush_fillet)));
  const double plain_end = s.step() - s.shaft_fillet;
  radial.push_back(centred(parts.bush, parts.shaft, s.bore, s.shaft,
                           shared(s.bush_low, s.top(), -20.0, plain_end)));
  if (s.washer_in - s.shaft < 2.0) {
    // A washer sunk into the flange has the bush between its bore and the shaft for that depth.
    radial.push_back(centred(
        parts.disc, parts.shaft, s.washer_in, s.shaft,
        shared(std::max(s.washer(), s.top()), s.washer() + s.washer_thick, -20.0, plain_end)));
  }
}

void add_flanged_faces(Station& station, const FlangedSizes& s, const FlangedParts& parts) {
  add_faces(station, parts.housing, parts.bush, s.gap_flange,
            ring_area(std::max(s.hole + 2 * s.chamfer, s.bush + 2 * s.bush_fillet), s.flange));
  add_faces(station, parts.bush, parts.disc, s.gap_washer,
            ring_area(std::max(s.washer_in, s.bore), std::min(s.washer_out, s.flange)));
  add_faces(station, parts.disc, parts.shaft, s.gap_shoulder,
            ring_area(std::max(s.washer_in, s.shaft + 2 * s.shaft_fillet),
                      std::min(s.washer_out, s.shoulder)));
  add_past_washer(station, s, parts.bush, parts.shaft);
}

TopoDS_Shape grooved_shaft(double shaft, double floor, double low, double high,
                           const Finish& finish) {
  return turned({{0.0, -10.0},
                 {shaft / 2, -10.0},
                 {shaft / 2, low},
                 {floor / 2, low},
                 {floor / 2, high},
                 {shaft / 2, high},
                 {shaft / 2, high + 6.0},
                 {0.0, high + 6.0}},
                finish);
}

// A ring with a gap of that angle, rad; 0 for a whole one.
TopoDS_Shape retaining_ring(double inner, double outer, double thick, double gap,
                            const Finish& finish) {
  TopoDS_Shape band = turned(bar(inner, outer, 0.0, thick), before_cutting(finish));
  if (gap > 0.0) {
    // A wedge with its point on the centre line: the same angle is missing at every diameter.
    const double reach = 4.0 * outer;
    const TopoDS_Shape one =
        moved(block({.x = {0.0, reach}, .y = {-reach, 0.0}, .z = {-1.0, thick + 1.0}}, {}, {}),
              turn(0, 0, 1, gap / 2));
    const TopoDS_Shape two =
        moved(block({.x = {0.0, reach}, .y = {0.0, reach}, .z = {-1.0, thick + 1.0}}, {}, {}),
              turn(0, 0, 1, -gap / 2));
    band = cut(band, common(one, two));
  }
  return rewritten(band, finish);
}

}  // namespace

Station flanged(Shop& shop) {
  Station station{"flanged", {}, {}, {}};
  const FlangedSizes s = flanged_sizes(shop.sizes);
  const FlangedParts parts = add_flanged_parts(station, shop, s);
  add_flanged_rounds(station, s, parts);
  add_flanged_faces(station, s, parts);
  return station;
}

Station shoulder(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"shoulder", {}, {}, {}};
  const double length = chance.size(10.0, 30.0);
  const double bore = chance.size(16.0, 40.0);
  const double clearance = some_clearance(chance, bore);
  const bool foul = chance.in(0.35) && clearance >= 0.0;
  const double gap = foul ? -chance.size(0.005, 0.95) : face_gap(chance);
  const double outer = bore + chance.size(14.0, 24.0);
  const double step = bore + chance.size(6.0, 26.0);
  const double groove = foul || chance.in(0.5) ? 0.0 : chance.size(1.0, 3.0);
  const std::size_t grooves = groove > 0.0 ? 1 + chance.below(4) : 0;
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  TopoDS_Shape ring = turned(bar(bore, outer, 0.0, length), before_cutting(a));
  for (std::size_t i = 0; i < grooves; ++i) {
    const TopoDS_Shape mill =
        moved(turned(bar(0.0, groove, 0.0, outer), {}),
              shift(0, 0, length) * turn(0, 0, 1, 0.3 + kFullTurn / 4 * static_cast<double>(i)) *
                  turn(0, 1, 0, std::numbers::pi / 2));
    ring = cut(ring, mill);
  }
  const auto hub = station.add("Thrust ring", rewritten(ring, a), a);
  const double shaft = bore - clearance;
  const double top = length + gap;
  const auto stud = station.add("Shouldered stud",
                                turned({{0.0, -12.0},
                                        {shaft / 2, -12.0},
                                        {shaft / 2, top},
                                        {step / 2, top},
                                        {step / 2, top + 9.0},
                                        {0.0, top + 9.0}},
                                       b),
                                b);
  station.truth.radial.push_back(centred(hub, stud, bore, shaft, shared(0.0, length, -12.0, top)));
  const double inner = std::max(bore, shaft);
  const double reach = std::min(outer, step);
  double area = ring_area(inner, reach);
  if (grooves > 0) {
    area -= static_cast<double>(grooves) * (strip(groove, reach / 2) - strip(groove, inner / 2));
  }
  add_faces(station, hub, stud, gap, area);
  return station;
}

Station ring_in_groove(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"ring in groove", {}, {}, {}};
  const double length = chance.size(10.0, 25.0);
  const double shaft = chance.size(14.0, 40.0);
  const double bore = shaft + chance.size(0.01, 0.3);
  const double outer = bore + chance.size(14.0, 20.0);
  const double floor = shaft - 2.0 * chance.size(1.2, 2.0);
  const double ring_in = floor + chance.size(0.1, 0.8);
  const double ring_out = shaft + chance.size(5.0, 9.0);
  const double ring = chance.size(1.2, 2.5);
  const double slack = chance.size(0.04, 0.3);
  const double play = slack * chance.between(0.0, 0.4);
  const double hub_gap = chance.size(0.05, 1.2);
  const double low = length + hub_gap;
  const double high = low + ring + slack;
  const double from = chance.in(0.5) ? chance.between(0.6, 1.2) : 0.0;  // gap in the ring, rad
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const Finish c = shop.finish();
  const auto hub = station.add("Hub", turned(bar(bore, outer, 0.0, length), a), a);
  const auto bar_ = station.add("Grooved shaft", grooved_shaft(shaft, floor, low, high, b), b);
  const auto clip = station.add("Retaining ring", retaining_ring(ring_in, ring_out, ring, from, c),
                                c, shift(0, 0, low + play) * turn(0, 0, 1, 0.7));
  const double part = (kFullTurn - from) / kFullTurn;
  station.truth.radial.push_back(centred(hub, bar_, bore, shaft, length));
  TrueRadial seat = centred(clip, bar_, ring_in, floor, ring);
  seat.coverage = kFullTurn * part;
  station.truth.radial.push_back(seat);
  add_faces(station, hub, clip, hub_gap + play, part * ring_area(bore, ring_out));
  // Square to the centre line: the ring's play each way, so axial seats, not a width.
  const double wall = part * ring_area(ring_in, shaft);
  add_faces(station, bar_, clip, play, wall);
  add_faces(station, bar_, clip, slack - play, wall);
  return station;
}

}  // namespace spotblue::test
