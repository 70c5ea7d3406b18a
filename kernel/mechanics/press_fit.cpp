#include "spotblue/mechanics/press_fit.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstddef>
#include <numbers>
#include <string>

#include "base/require.hpp"
#include "mechanics/require.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

void require_between(double value, double low, double high, const std::string& argument) {
  if (!(value >= low) || !(value < high)) {
    throw Error(ErrorCode::bad_input, {"", argument},
                fmt::format("need at least {} and less than {} mm, got {} mm", low, high, value),
                "check which diameter is which: bore, joint, outside");
  }
}

void require_fit(const PressFit& fit) {
  require_value(fit, "fit");
  require_interference(fit.interference_mm, fit.joint_mm, "fit.interference_mm");
  require_elastic(fit.hub, "fit.hub");
  require_elastic(fit.inner, "fit.inner");
  if (fit.friction_least > fit.friction_greatest) {
    throw Error(ErrorCode::bad_input, {"", "fit.friction_least"},
                fmt::format("need at most the greatest ({}), got {}", fit.friction_greatest,
                            fit.friction_least),
                "swap the two");
  }
  if (fit.stretches.empty()) {
    throw Error(ErrorCode::bad_input, {"", "fit.stretches"}, "need at least one stretch, got none",
                "give the length and walls of the joint");
  }
  for (std::size_t i = 0; i < fit.stretches.size(); ++i) {
    const std::string name = fmt::format("fit.stretches[{}]", i);
    const PressStretch& stretch = fit.stretches[i];
    require_between(fit.joint_mm, 0.0, stretch.hub_outside_mm, name + ".hub_outside_mm");
    require_between(stretch.inner_bore_mm, 0.0, fit.joint_mm, name + ".inner_bore_mm");
  }
}

StretchState stretch_state(const PressFit& fit, const PressStretch& stretch) {
  const Ring hub{fit.joint_mm, stretch.hub_outside_mm, fit.hub};
  const Ring inner{stretch.inner_bore_mm, fit.joint_mm, fit.inner};
  const double give = loaded_ring(hub, {1.0, 0.0}).bore_change_mm -
                      loaded_ring(inner, {0.0, 1.0}).outside_change_mm;
  StretchState state;
  state.pressure_mpa = fit.interference_mm / give;
  state.hub = loaded_ring(hub, {state.pressure_mpa, 0.0});
  state.inner = loaded_ring(inner, {0.0, state.pressure_mpa});
  return state;
}

double demand(const SurfaceStress& stress, const Elastic& material) {
  // Without a strength the stress itself still says which surface is worst.
  const bool brittle = material.gives_way == GivesWay::brittle;
  return brittle ? std::max(stress.hoop_mpa, stress.radial_mpa) : stress.equivalent_mpa;
}

void take_worse(Governing& worst, PressSurface surface, const SurfaceStress& stress,
                const Elastic& material) {
  if (demand(stress, material) > demand(worst.stress, material)) {
    worst = {surface, stress, utilisation(stress, material)};
  }
}

}  // namespace

void require_interference(double interference_mm, double joint_mm, const std::string& argument) {
  if (!(interference_mm <= kMostInterferenceShare * joint_mm)) {
    throw Error(ErrorCode::bad_input, {"", argument},
                fmt::format("an interference of {} mm on a joint of {} mm is more than any metal "
                            "bears",
                            interference_mm, joint_mm),
                "check which diameter is which, and their units");
  }
}

double effective_interference_mm(double interference_mm, double rz_hub_um, double rz_inner_um,
                                 double loss) {
  require_finite(interference_mm, "interference_mm", "mm");
  require_not_negative(rz_hub_um, "rz_hub_um", "um");
  require_not_negative(rz_inner_um, "rz_inner_um", "um");
  require_not_negative(loss, "loss", "");
  return std::max(0.0, interference_mm - loss * (rz_hub_um + rz_inner_um) / 1000.0);
}

PressState press_fit(const PressFit& fit) {
  require_fit(fit);
  PressState total;
  total.hub = {PressSurface::hub_bore, {}, utilisation({}, fit.hub)};
  total.inner = {PressSurface::inner_bore, {}, utilisation({}, fit.inner)};
  double pressed_n = 0.0;  // pressure times area
  for (const PressStretch& stretch : fit.stretches) {
    const StretchState state = stretch_state(fit, stretch);
    take_worse(total.hub, PressSurface::hub_bore, state.hub.bore, fit.hub);
    take_worse(total.hub, PressSurface::hub_outside, state.hub.outside, fit.hub);
    take_worse(total.inner, PressSurface::inner_bore, state.inner.bore, fit.inner);
    take_worse(total.inner, PressSurface::inner_outside, state.inner.outside, fit.inner);
    const bool first = total.stretches.empty();
    total.least_pressure_mpa =
        first ? state.pressure_mpa : std::min(total.least_pressure_mpa, state.pressure_mpa);
    total.greatest_pressure_mpa = std::max(total.greatest_pressure_mpa, state.pressure_mpa);
    total.bore_close_in_mm = std::max(total.bore_close_in_mm, -state.inner.bore_change_mm);
    total.hub_growth_mm = std::max(total.hub_growth_mm, state.hub.outside_change_mm);
    pressed_n += state.pressure_mpa * std::numbers::pi * fit.joint_mm * stretch.length_mm;
    total.stretches.push_back(state);
  }
  total.force_to_press_n = fit.friction_greatest * pressed_n;
  total.axial_hold_n = fit.friction_least * pressed_n;
  total.holding_torque_nm = total.axial_hold_n * fit.joint_mm / 2000.0;
  return total;
}

}  // namespace spotblue
