// A shaft's rounded corner against a hub's sharp one: the hub runs up to the shoulder and fouls the
// radius, or a chamfer keeps it clear.

#include <algorithm>
#include <cmath>

#include "support/families/family.hpp"

namespace spotblue::test {
namespace {

// mm3 of the fillet (radius R, on a shaft of radius s, up to a shoulder at height 0) that lies
// farther out than `bore` and lower than -gap: rings of the fillet's profile, summed over r by
// Gauss-Legendre on fine steps.
double fillet_beyond(double fillet, double s, double bore, double gap) {
  const double centre = s + fillet;
  const auto height = [&](double r) {  // of the hub's metal in the fillet's at radius r
    const double surface =
        -fillet + std::sqrt(std::max(0.0, fillet * fillet - (r - centre) * (r - centre)));
    return std::max(0.0, -gap - surface);
  };
  // Metal of the fillet lies above its surface; the hub's begins at -gap and goes down.
  const double most =
      centre - std::sqrt(std::max(0.0, fillet * fillet - std::pow(fillet - gap, 2)));
  constexpr int kSteps = 4000;
  double sum = 0.0;
  for (int i = 0; i < kSteps; ++i) {
    for (const double side : {-1.0, 1.0}) {
      const double t = (i + 0.5 + side * 0.28867513459481287) / kSteps;
      const double r = bore + (most - bore) * t;
      sum += height(r) * r;
    }
  }
  return most > bore ? kFullTurn * sum * (most - bore) / (2.0 * kSteps) : 0.0;
}

}  // namespace

Station corner_radius(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"corner radius", {}, {}, {}};
  const double shaft = chance.size(16.0, 40.0);
  const double bore = shaft + chance.size(0.01, 0.1);
  const double fillet = chance.size(1.0, 2.5);
  const bool clear = chance.in(0.4);
  const double gap = chance.in(0.5) ? 0.0 : chance.size(0.01, 0.05);
  const double leg = clear ? fillet + 0.2 : 0.0;
  const double outer = shaft + 2.0 * fillet + 16.0;
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const double top = -gap;
  const auto hub = station.add("Sharp hub",
                               turned({{bore / 2, -20.0},
                                       {outer / 2, -20.0},
                                       {outer / 2, top},
                                       {bore / 2 + leg, top},
                                       {bore / 2, top - leg}},
                                      a),
                               a);
  const auto rod = station.add("Rounded shaft",
                               turned({{0.0, -30.0},
                                       {shaft / 2, -30.0},
                                       {shaft / 2, 0.0, fillet},
                                       {outer / 2, 0.0},
                                       {outer / 2, 8.0},
                                       {0.0, 8.0}},
                                      b),
                               b);
  station.truth.radial.push_back(
      centred(hub, rod, bore, shaft, shared(-20.0, top - leg, -30.0, -fillet)));
  station.truth.axial.push_back(
      {hub, rod, gap, ring_area(std::max(bore + 2.0 * leg, shaft + 2.0 * fillet), outer), true});
  if (!clear) {
    station.truth.fouls.push_back({hub, rod, fillet_beyond(fillet, shaft / 2, bore / 2, gap), 0.0});
  }
  return station;
}

}  // namespace spotblue::test
