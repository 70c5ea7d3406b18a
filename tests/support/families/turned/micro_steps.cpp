// Differences of a tenth of a micrometre: two lands of one bore, and a face that all but touches.

#include <algorithm>

#include "support/families/family.hpp"

namespace spotblue::test {

Station micro_steps(Shop& shop) {
  Chance& chance = shop.sizes;
  constexpr double kStep = 1e-4;
  Station station{"micro steps", {}, {}, {}};
  const double shaft = chance.size(10.0, 40.0);
  const double hole = shaft + kStep * static_cast<double>(chance.below(3)) - kStep;
  const double other = hole + kStep;
  const double outer = shaft + 20.0;
  const double relief = hole + 3.0;
  const double gap = kStep * (chance.in(0.5) ? 1.0 : -1.0);
  // Faces whole or in halves: a spline's surface is true to a tenth of a micrometre at best.
  const Finish plain{chance.in(0.5) ? 1.9 : 0.0, Surfaces::analytic};
  const auto hub = station.add("Two lands",
                               turned({{hole / 2, 0.0},
                                       {outer / 2, 0.0},
                                       {outer / 2, 24.0},
                                       {other / 2, 24.0},
                                       {other / 2, 14.0},
                                       {relief / 2, 14.0},
                                       {relief / 2, 10.0},
                                       {hole / 2, 10.0}},
                                      plain),
                               plain);
  const double collar = outer - 4.0;
  const auto pin = station.add("Collared pin",
                               turned({{0.0, -10.0},
                                       {shaft / 2, -10.0},
                                       {shaft / 2, 24.0 + gap},
                                       {collar / 2, 24.0 + gap},
                                       {collar / 2, 34.0},
                                       {0.0, 34.0}},
                                      plain),
                               plain);
  station.truth.radial.push_back(centred(hub, pin, hole, shaft, 10.0));
  station.truth.radial.push_back(centred(hub, pin, other, shaft, 10.0 + std::min(0.0, gap)));
  add_faces(station, hub, pin, gap, ring_area(std::max(other, shaft), collar));
  return station;
}

}  // namespace spotblue::test
