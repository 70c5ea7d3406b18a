#include "support/station.hpp"

#include <algorithm>
#include <cmath>

namespace spotblue::test {

std::size_t Station::add(const std::string& name, const TopoDS_Shape& shape, const Finish& finish,
                         const gp_Trsf& at) {
  parts.push_back({name, shape, finish.surfaces == Surfaces::spline});
  placed.push_back({parts.size() - 1, at});
  return placed.size() - 1;
}

std::size_t Station::add_again(std::size_t like, const gp_Trsf& at) {
  placed.push_back({placed[like].part, at});
  return placed.size() - 1;
}

Finish before_cutting(const Finish& finish) { return {finish.seam, Surfaces::analytic}; }

double ring_area(double inner, double outer) {
  return outer <= inner ? 0.0 : std::numbers::pi / 4.0 * (outer * outer - inner * inner);
}

double shared(double from_a, double to_a, double from_b, double to_b) {
  return std::max(0.0, std::min(to_a, to_b) - std::max(from_a, from_b));
}

double press_limit(double diameter) { return std::max(0.02, 0.005 * diameter); }

double some_clearance(Chance& chance, double diameter) {
  const double draw = chance.between(0.0, 1.0);
  if (draw < 0.12) {
    return 0.0;
  }
  if (draw < 0.45) {
    return -2.0 * press_limit(diameter) * chance.between(0.05, 0.95);
  }
  return draw < 0.85 ? chance.size(0.004, 0.4) : chance.size(0.4, 1.9);
}

void add_faces(Station& station, std::size_t a, std::size_t b, double gap, double area,
               bool on_centre_line) {
  station.truth.axial.push_back({a, b, gap, area, on_centre_line});
  if (gap < 0.0) {
    station.truth.fouls.push_back({a, b, area * -gap, -gap});
  }
}

double face_gap(Chance& chance) {
  return chance.in(0.35) ? 0.0 : chance.in(0.5) ? chance.size(0.004, 0.3) : chance.size(0.3, 1.9);
}

TrueRadial centred(std::size_t hole, std::size_t shaft, double big, double small, double engaged) {
  TrueRadial seat{hole, shaft, big, small, engaged};
  seat.least_gap = (big - small) / 2;
  return seat;
}

}  // namespace spotblue::test
