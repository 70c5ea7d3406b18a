// A splined shaft with straight-sided teeth in its hub: flanks, tips and roots.

#include <algorithm>
#include <cmath>

#include "support/families/family.hpp"

namespace spotblue::test {
namespace {

struct SplineSizes {
  double tip = 0.0, root = 0.0, tooth = 0.0;  // diameters and the width between flanks
};

// How far out a flank reaches on a circle.
double on_circle(double diameter, double tooth) {
  return std::sqrt(diameter * diameter - tooth * tooth) / 2;
}

RoundOutline spline_outline(const SplineSizes& s, std::size_t teeth) {
  RoundOutline outline;
  const double step = kFullTurn / static_cast<double>(teeth);
  for (std::size_t i = 0; i < teeth; ++i) {
    const double cos = std::cos(step * static_cast<double>(i));
    const double sin = std::sin(step * static_cast<double>(i));
    const auto add = [&](double x, double y, bool round) {
      outline.push_back({cos * x - sin * y, sin * x + cos * y, round});
    };
    add(on_circle(s.root, s.tooth), -s.tooth / 2, false);
    add(on_circle(s.tip, s.tooth), -s.tooth / 2, true);
    add(on_circle(s.tip, s.tooth), s.tooth / 2, false);
    add(on_circle(s.root, s.tooth), s.tooth / 2, true);
  }
  return outline;
}

}  // namespace

Station straight_spline(Shop& shop) {
  Chance& chance = shop.sizes;
  Station station{"straight spline", {}, {}, {}};
  const std::size_t teeth = 4 + chance.below(5);
  SplineSizes in;
  in.root = chance.size(18.0, 36.0);
  in.tip = in.root + chance.size(4.2, 7.0);
  in.tooth = in.root * chance.between(0.35, 0.5) *
             std::sin(kFullTurn / 2.0 / static_cast<double>(teeth)) * 1.4;
  in.tooth = std::round(in.tooth * 1000.0) / 1000.0;
  const SplineSizes out{in.tip + chance.size(0.01, 0.6), in.root + chance.size(0.01, 0.6),
                        in.tooth + (chance.in(0.3) ? 0.001 : chance.size(0.01, 0.2))};
  const double length = chance.size(10.0, 24.0);
  const Finish a = shop.finish();
  const Finish b = shop.finish();
  const auto hub = station.add(
      "Splined hub", round_hub(spline_outline(out, teeth), out.tip + 16.0, 0.0, length, a), a);
  const auto shaft = station.add("Splined shaft",
                                 round_prism(spline_outline(in, teeth), -6.0, length + 6.0, b), b);
  const double count = static_cast<double>(teeth);
  TrueRadial tips = centred(hub, shaft, out.tip, in.tip, length);
  tips.coverage =
      count * 2.0 * std::min(std::asin(in.tooth / in.tip), std::asin(out.tooth / out.tip));
  TrueRadial roots = centred(hub, shaft, out.root, in.root, length);
  roots.coverage =
      kFullTurn -
      count * 2.0 * std::max(std::asin(in.tooth / in.root), std::asin(out.tooth / out.root));
  station.truth.radial.push_back(tips);
  station.truth.radial.push_back(roots);
  const double flank = std::min(on_circle(in.tip, in.tooth), on_circle(out.tip, out.tooth)) -
                       std::max(on_circle(in.root, in.tooth), on_circle(out.root, out.tooth));
  // Flanks of opposite teeth lie in one plane: one width each for two of them.
  const std::size_t widths = teeth % 2 == 0 ? teeth / 2 : teeth;
  const double share = count / static_cast<double>(widths);
  for (std::size_t i = 0; i < widths; ++i) {
    station.truth.width.push_back({hub, shaft, out.tooth, in.tooth, 0.0, share * flank * length});
  }
  return station;
}

}  // namespace spotblue::test
