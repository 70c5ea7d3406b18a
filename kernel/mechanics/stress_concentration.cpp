#include "spotblue/mechanics/stress_concentration.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

#include "base/require.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

// One coefficient: constant + root sqrt(h/r) + linear h/r.
struct Coefficient {
  double constant, root, linear;
};

// How far Peterson and Roark differ in bending, worked over the whole range that both give; how far
// Peterson is from worked steps of another chart in torsion [GERE]; a keyseat of r/d 0.02 in two
// textbooks and Peterson.
constexpr double kBooksDiffer_percent = 3.4;
constexpr double kChartsDiffer_percent = 3.0;
constexpr double kKeyseatsDiffer_percent = 3.0;

struct CurveFit {
  double least, most;  // of h/r, both included
  std::array<Coefficient, 4> c;
};

// Peterson, shoulder fillet in a round bar, chart 3.10 (bending), signs as the header says.
constexpr std::array<CurveFit, 2> kPetersonBending{{
    {0.1,
     2.0,
     {{{0.947, 1.206, -0.131},
       {0.022, -3.405, 0.915},
       {0.869, 1.777, -0.555},
       {-0.810, 0.422, -0.260}}}},
    {2.0,
     20.0,
     {{{1.232, 0.832, -0.008},
       {-3.813, 0.968, -0.260},
       {7.423, -4.868, 0.869},
       {-3.839, 3.070, -0.600}}}},
}};

// The same, torsion.
constexpr std::array<CurveFit, 1> kPetersonTorsion{{
    {0.25,
     4.0,
     {{{0.905, 0.783, -0.075},
       {-0.437, -1.969, 0.553},
       {1.557, 1.073, -0.578},
       {-1.061, 0.171, 0.086}}}},
}};

// The same, tension.
constexpr std::array<CurveFit, 2> kPetersonTension{{
    {0.1,
     2.0,
     {{{0.926, 1.157, -0.099},
       {0.012, -3.036, 0.961},
       {-0.302, 3.977, -1.744},
       {0.365, -2.098, 0.878}}}},
    {2.0,
     20.0,
     {{{1.200, 0.860, -0.022},
       {-1.805, -0.346, -0.038},
       {2.198, -0.486, 0.165},
       {-0.593, -0.028, -0.106}}}},
}};

// Roark, table 17.1, bending; read in a reprint.
constexpr std::array<CurveFit, 2> kRoarkBending{{
    {0.25,
     2.0,
     {{{0.927, 1.149, -0.086},
       {0.015, -3.281, 0.837},
       {0.847, 1.716, -0.506},
       {-0.790, 0.417, -0.246}}}},
    {2.0,
     20.0,
     {{{1.225, 0.831, -0.010},
       {-3.790, 0.958, -0.257},
       {7.374, -4.834, 0.862},
       {-3.809, 3.046, -0.595}}}},
}};

void require_step(const SteppedShaft& step) {
  require_value(step, "step");
  if (!(step.larger_mm > step.smaller_mm)) {
    throw Error(ErrorCode::bad_input, {"", "step.larger_mm"},
                fmt::format("need more than the smaller diameter of {} mm, got {} mm",
                            step.smaller_mm, step.larger_mm),
                "swap or correct the two diameters");
  }
}

double value_of(const CurveFit& fit, double ratio, double x) {
  double sum = 0.0;
  double power = 1.0;
  for (const Coefficient& c : fit.c) {
    sum += power * (c.constant + c.root * std::sqrt(ratio) + c.linear * ratio);
    power *= x;
  }
  return sum;
}

// The fits differ by up to 4 % where one ends and the next begins. From here on the first is led
// over to the next, so that a fillet a hair sharper is no other shaft. Choice of this program, no
// source.
constexpr double kLedOverFrom = 0.75;  // of where the first ends

double led_over(const CurveFit& fit, const CurveFit* next, double ratio, double x) {
  const double value = value_of(fit, ratio, x);
  const double from = kLedOverFrom * fit.most;
  if (next == nullptr || ratio <= from) {
    return value;
  }
  const double share = (ratio - from) / (fit.most - from);
  return value * (1.0 + share * (value_of(*next, fit.most, x) / value_of(fit, fit.most, x) - 1.0));
}

StressFactor from_fits(const SteppedShaft& step, std::span<const CurveFit> fits,
                       std::optional<double> within_percent) {
  require_step(step);
  const double height = 0.5 * (step.larger_mm - step.smaller_mm);
  const double ratio = height / step.fillet_mm;
  for (std::size_t i = 0; i < fits.size(); ++i) {
    if (ratio >= fits[i].least && ratio <= fits[i].most) {
      const CurveFit* const next = i + 1 < fits.size() ? &fits[i + 1] : nullptr;
      // The fits dip to 0.97 where hardly any step or shaft is left; no notch relieves its shaft.
      return {std::max(1.0, led_over(fits[i], next, ratio, 2.0 * height / step.larger_mm)),
              within_percent,
              {}};
    }
  }
  return {std::nullopt, std::nullopt,
          fmt::format("step {:.3g} x fillet is outside the published {:g} to {:g}", ratio,
                      fits.front().least, fits.back().most)};
}

}  // namespace

StressFactor shoulder_factor(const SteppedShaft& step, ShaftLoad load) {
  switch (load) {
    case ShaftLoad::bending:
      return from_fits(step, kPetersonBending, kBooksDiffer_percent);
    case ShaftLoad::torsion:
      return from_fits(step, kPetersonTorsion, kChartsDiffer_percent);
    case ShaftLoad::tension:
      break;
  }
  return from_fits(step, kPetersonTension, std::nullopt);
}

StressFactor shoulder_bending_factor_roark(const SteppedShaft& step) {
  return from_fits(step, kRoarkBending, kBooksDiffer_percent);
}

StressFactor keyseat_factor(Diameter diameter, Radius bottom, ShaftLoad load) {
  require_positive(diameter.in_mm(), "diameter_mm", "mm");
  require_positive(bottom.in_mm(), "bottom_radius_mm", "mm");
  constexpr double least = 0.005;
  constexpr double most = 0.07;
  const double ratio = bottom.length() / diameter.length();
  if (ratio < least || ratio > most) {
    return {
        std::nullopt, std::nullopt,
        fmt::format("bottom radius {:.3g} of the diameter is outside the published {:g} to {:g}",
                    ratio, least, most)};
  }
  if (load == ShaftLoad::tension) {
    return {std::nullopt, std::nullopt, "no published factor for tension"};
  }
  const double q = 0.1 / ratio;
  const double bending = 1.426 + q * (0.1643 - 0.0019 * q);
  const double torsion = 1.953 + q * (0.1434 - 0.0021 * q);
  return load == ShaftLoad::bending ? StressFactor{bending, kKeyseatsDiffer_percent, {}}
                                    : StressFactor{torsion, std::nullopt, {}};
}

StressFactor first_pass_factor(ShaftNotch notch, ShaftLoad load) {
  const std::string_view none = "the source has no value for this";
  if (load == ShaftLoad::bending) {
    switch (notch) {
      case ShaftNotch::end_milled_keyseat:
        return {2.14, kKeyseatsDiffer_percent, {}};
      case ShaftNotch::sled_runner_keyseat:
        return {1.7, std::nullopt, {}};
      case ShaftNotch::ring_groove:
        return {5.0, std::nullopt, {}};
    }
  }
  if (load == ShaftLoad::torsion && notch != ShaftNotch::sled_runner_keyseat) {
    return {3.0, std::nullopt, {}};
  }
  return {std::nullopt, std::nullopt, std::string(none)};
}

}  // namespace spotblue
