// Stations of round parts in one another: running and press fits, sleeves, cross pins, tapers.

#include <algorithm>
#include <cmath>

#include "support/station.hpp"

namespace spotblue::test {
namespace {

enum class Hole { block, ring, chamfered, grooved, slit, drilled };

struct Bore {
  TopoDS_Shape shape;
  double engaged = 0.0;  // over its whole length
  double first = 0.0;    // where its surface begins
  double coverage = kFullTurn;
};

TopoDS_Shape radial_drill(double diameter, double reach, double z) {
  const TopoDS_Shape drill = turned(bar(0.0, diameter, 0.0, reach), {});
  return moved(moved(drill, turn(0, 1, 0, std::numbers::pi / 2)), shift(0, 0, z));
}

Section grooved_ring(double inner, double outer, double length, double from, double to) {
  const double r = inner / 2;
  return {{r, 0.0}, {outer / 2, 0.0}, {outer / 2, length}, {r, length},
          {r, to},  {r + 1.5, to},    {r + 1.5, from},     {r, from}};
}

Bore make_bore(Hole kind, double diameter, double length, Shop& shop, const Finish& finish) {
  const double outer = diameter + shop.sizes.size(14.0, 24.0);
  const double half = outer / 2;
  const double draw = shop.sizes.between(0.0, 1.0);
  switch (kind) {
    case Hole::block:
      return {block({.x = {-half, half}, .y = {-half, half}, .z = {0.0, length}},
                    {{0, 0, diameter}}, finish),
              length};
    case Hole::ring:
      return {turned(bar(diameter, outer, 0.0, length), finish), length};
    case Hole::chamfered: {
      const double leg = 0.3 + draw;
      return {turned(chamfered_ring(diameter, outer, 0.0, length, leg), finish), length - 2 * leg,
              leg};
    }
    case Hole::grooved: {
      const double width = length * (0.1 + 0.2 * draw);
      const double from = 0.35 * length;
      return {turned(grooved_ring(diameter, outer, length, from, from + width), finish),
              length - width};
    }
    case Hole::slit: {
      const double width = 1.0 + 3.0 * draw;
      const TopoDS_Shape saw = block(
          {.x = {0.0, outer}, .y = {-width / 2, width / 2}, .z = {-1.0, length + 1.0}}, {}, {});
      const TopoDS_Shape ring = turned(bar(diameter, outer, 0.0, length), before_cutting(finish));
      return {rewritten(cut(ring, saw), finish), length, 0.0,
              kFullTurn - 2.0 * std::asin(width / diameter)};
    }
    case Hole::drilled:
      break;
  }
  const TopoDS_Shape drill = radial_drill(1.5 + 2.0 * draw, outer, length / 2);
  const TopoDS_Shape ring = turned(bar(diameter, outer, 0.0, length), before_cutting(finish));
  return {rewritten(cut(ring, drill), finish), length};
}

// Greatest distance from the hole's axis of a shaft of radius r whose axis stands `offset` to one
// side and, square to that, `run` away where the hole ends; its section there is an ellipse.
double tilted_reach(double r, double offset, double run, double tilt) {
  const auto reach = [&](double angle) {
    return std::hypot(offset + r * std::cos(angle), run + r / std::cos(tilt) * std::sin(angle));
  };
  double low = 0.0;
  double high = std::numbers::pi / 2;
  constexpr double kGolden = 0.6180339887498949;
  for (int i = 0; i < 90; ++i) {
    const double left = high - kGolden * (high - low);
    const double right = low + kGolden * (high - low);
    (reach(left) < reach(right) ? low : high) = reach(left) < reach(right) ? left : right;
  }
  return reach((low + high) / 2);
}

// Area of a disc of radius r beyond a circle of radius hole whose centre is e away.
double beyond(double hole, double r, double e) {
  const double a = std::acos((e * e + r * r - hole * hole) / (2 * e * r));
  const double b = std::acos((e * e + hole * hole - r * r) / (2 * e * hole));
  const double kite =
      0.5 * std::sqrt((r + hole - e) * (e + r - hole) * (e - r + hole) * (e + r + hole));
  return std::numbers::pi * r * r - (r * r * a + hole * hole * b - kite);
}

gp_Trsf leaning(double offset, double tilt, double direction, double about_z) {
  const double x = -std::sin(direction);
  const double y = std::cos(direction);
  return shift(offset * x, offset * y, about_z) * turn(x, y, 0, tilt) * shift(0, 0, -about_z);
}

void add_foul(Station& station, const TrueRadial& seat, bool plain) {
  if (seat.hole_diameter < seat.shaft_diameter || seat.least_gap > -1e-9) {
    return;
  }
  TrueFoul foul{seat.hole, seat.shaft, {}, -seat.least_gap};
  if (plain && seat.tilt == 0.0) {
    foul.volume =
        beyond(seat.hole_diameter / 2, seat.shaft_diameter / 2, seat.offset) * seat.engaged;
  }
  // Askew, and clear in the middle: at each end by itself.
  foul.in_pieces =
      seat.tilt > 0.0 && seat.offset + 0.5 * seat.shaft_diameter < 0.5 * seat.hole_diameter;
  station.truth.fouls.push_back(foul);
}

}  // namespace

Station running(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"running", {}, {}, {}};
  const double diameter = chance.size(8.0, 60.0);
  const double length = chance.size(12.0, 36.0);
  const double clearance = some_clearance(chance, diameter);
  const auto kind = static_cast<Hole>(chance.below(6));
  const Finish hole_finish = shop.finish();
  const Bore bore = make_bore(kind, diameter, length, shop, hole_finish);
  const bool plain = kind == Hole::block || kind == Hole::ring;
  const bool through = !plain || chance.in(0.7);

  double offset = 0.0;
  double tilt = 0.0;
  const double pose = chance.between(0.0, 1.0);
  const double amount = chance.between(0.05, 0.95);
  const double room = 0.45;  // within the 0.5 mm of a near-coaxial pair, at both ends
  if (plain && clearance > 0.0 && pose < 0.5) {
    offset = pose < 0.35 ? room * amount : 0.0;
    if (through && pose > 0.2) {
      const double most = std::min(0.9, std::atan((room - offset) / (length / 2)) * 57.29);
      tilt = most * chance.between(0.1, 0.95) / 57.29;
    }
  }
  const double shaft_top = through ? length + chance.size(6.0, 15.0) : 0.6 * length;
  const Finish shaft_finish = shop.finish();
  const double shaft = diameter - clearance;
  TrueRadial seat{station.add("Hub", bore.shape, hole_finish), 0, diameter, shaft, bore.engaged};
  if (!through) {
    seat.engaged = shaft_top;
  }
  seat.shaft =
      station.add("Shaft", turned(bar(0.0, shaft, -10.0, shaft_top), shaft_finish), shaft_finish,
                  leaning(offset, tilt, chance.between(0.0, 6.28), length / 2));
  seat.offset = offset;
  seat.tilt = tilt;
  seat.coverage = bore.coverage;
  seat.least_gap = diameter / 2 - (tilt == 0.0 ? shaft / 2 + offset
                                               : tilted_reach(shaft / 2, offset,
                                                              length / 2 * std::tan(tilt), tilt));
  station.truth.radial.push_back(seat);
  add_foul(station, seat, plain);
  return station;
}

Station sleeve(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"sleeve", {}, {}, {}};
  const double diameter = chance.size(12.0, 46.0);
  const double length = chance.size(14.0, 36.0);
  const double outer = diameter - std::min(0.2, some_clearance(chance, diameter));
  const double wall = chance.in(0.65) ? chance.size(0.2, 0.8) : chance.size(2.0, 4.0);
  const double inner = outer - 2.0 * wall;
  const double shaft = inner - chance.size(0.004, 0.1);
  const bool full = chance.in(0.6);
  const double low = full ? -chance.size(0.0, 5.0) : chance.size(1.0, 5.0);
  const double high = full ? length + (chance.in(0.5) ? 0.0 : 3.0) : length - chance.size(1.0, 5.0);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const Finish c = shop.finish();
  const double half = diameter / 2 + chance.size(6.0, 12.0);
  const auto housing = station.add(
      "Housing",
      block({.x = {-half, half}, .y = {-half, half}, .z = {0.0, length}}, {{0, 0, diameter}}, a),
      a);
  const auto bush = station.add("Bush", turned(bar(inner, outer, low, high), b), b);
  const auto pin = station.add("Shaft", turned(bar(0.0, shaft, -15.0, length + 15.0), c), c);
  const double held = shared(0.0, length, low, high);
  const auto seat = [](std::size_t hole, std::size_t in, double big, double small, double engaged) {
    TrueRadial made{hole, in, big, small, engaged};
    made.least_gap = (big - small) / 2;
    return made;
  };
  station.truth.radial.push_back(seat(housing, bush, diameter, outer, held));
  station.truth.radial.push_back(seat(bush, pin, inner, shaft, high - low));
  // Where the bush is short, housing and shaft look at each other past its ends.
  const double bare = (diameter - shaft) / 2;
  if (!full && bare <= 1.0) {
    station.truth.radial.push_back(seat(housing, pin, diameter, shaft, length - held));
  }
  return station;
}

Station cross_pin(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"cross pin", {}, {}, {}};
  const double shaft = chance.size(14.0, 30.0);
  const double bore = shaft + chance.size(0.01, 0.1);
  const double outer = bore + chance.size(10.0, 16.0);
  const double length = chance.size(16.0, 30.0);
  const double pin = chance.size(3.0, 6.0);
  const double in_hub = pin + chance.size(0.005, 0.05);
  const double in_shaft = pin + chance.size(0.005, 0.05);
  const TopoDS_Shape along_x = moved(turned(bar(0.0, in_hub, -60.0, 60.0), {}),
                                     shift(0, 0, length / 2) * turn(0, 1, 0, std::numbers::pi / 2));
  const TopoDS_Shape shaft_drill =
      moved(turned(bar(0.0, in_shaft, -60.0, 60.0), {}),
            shift(0, 0, length / 2) * turn(0, 1, 0, std::numbers::pi / 2));
  const auto hub = station.add("Hub", cut(turned(bar(bore, outer, 0.0, length), {}), along_x), {});
  const auto bar_ =
      station.add("Shaft", cut(turned(bar(0.0, shaft, -8.0, length + 8.0), {}), shaft_drill), {});
  const Finish finish = shop.finish();
  const auto cross =
      station.add("Pin", turned(bar(0.0, pin, -outer / 2 - 5, outer / 2 + 5), finish), finish,
                  shift(0, 0, length / 2) * turn(0, 1, 0, std::numbers::pi / 2));
  const auto seat = [](std::size_t hole, std::size_t in, double big, double small, double engaged,
                       double slack) {
    TrueRadial made{hole, in, big, small, engaged};
    made.least_gap = (big - small) / 2;
    made.engaged_slack = slack;
    return made;
  };
  // The hub's cross hole begins where the bore wall first meets it and ends where the outside does.
  const double begins = std::sqrt(bore * bore - in_hub * in_hub) / 2;
  station.truth.radial.push_back(seat(hub, bar_, bore, shaft, length, 0.0));
  station.truth.radial.push_back(seat(hub, cross, in_hub, pin, 2.0 * (outer / 2 - begins), 1e-4));
  station.truth.radial.push_back(seat(bar_, cross, in_shaft, pin, shaft, 1e-4));
  return station;
}

Station taper(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"taper", {}, {}, {}};
  const double length = chance.size(15.0, 36.0);
  const double small_end = chance.size(20.0, 40.0) / 2;
  const double hole_angle = chance.between(2.0, 10.0) * std::numbers::pi / 180.0;
  const bool alike = chance.in(0.6);
  const double shaft_angle =
      hole_angle +
      (alike ? 0.0 : chance.sign() * chance.between(0.02, 0.2) * std::numbers::pi / 180);
  const double middle = small_end + length / 2 * std::tan(hole_angle);
  const double spread = std::abs(std::tan(shaft_angle) - std::tan(hole_angle)) * length / 2;
  const double draw = chance.between(0.0, 1.0);
  const double apart =
      alike && draw < 0.3 ? (draw < 0.15 ? 0.0 : -0.015) : spread + 0.01 + 0.4 * draw;
  const double big_end = small_end + length * std::tan(hole_angle);
  const double outer = big_end + chance.size(6.0, 12.0);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const auto hub = station.add(
      "Tapered hub",
      turned({{small_end, 0.0}, {outer, 0.0}, {outer, length}, {big_end, length}}, a), a);
  const double low = middle - apart - (length / 2 + 5.0) * std::tan(shaft_angle);
  const double high = middle - apart + (length / 2 + 5.0) * std::tan(shaft_angle);
  const auto shaft = station.add(
      "Tapered shaft",
      turned({{0.0, -5.0}, {low, -5.0}, {high, length + 5.0}, {0.0, length + 5.0}}, b), b);
  TrueTaper seat{hub, shaft, hole_angle, shaft_angle};
  seat.gap = apart * std::cos(shaft_angle) / std::cos(hole_angle - shaft_angle);
  seat.engaged = length;
  seat.diameter = 2.0 * middle;
  station.truth.taper.push_back(seat);
  return station;
}

}  // namespace spotblue::test
