#include "spotblue/mechanics/shrink_in.hpp"

#include <algorithm>

#include "base/require.hpp"
#include "mechanics/require.hpp"

namespace spotblue {

namespace {

// Strains are even in interference, so any will do; one in a thousand is of the size of presses.
constexpr double kUnitShare = 1e-3;

// The greatest interference that neither part yields under, mm; none where nothing is known.
std::optional<double> bearable_mm(PressFit fit) {
  fit.interference_mm = kUnitShare * fit.joint_mm;
  const PressState unit = press_fit(fit);
  const double used =
      std::max(unit.hub.utilisation.value_or(0.0), unit.inner.utilisation.value_or(0.0));
  return used > 0.0 ? std::optional(fit.interference_mm / used) : std::nullopt;
}

bool allows(const SlipBounds& bounds, double temperature_c) {
  return temperature_c > kTemperature_c.least && temperature_c <= kTemperature_c.greatest &&
         temperature_c >= bounds.coldest_c.value_or(kTemperature_c.least) &&
         temperature_c <= bounds.hottest_c.value_or(kTemperature_c.greatest);
}

std::optional<double> allowed(const SlipBounds& bounds, double temperature_c) {
  return allows(bounds, temperature_c) ? std::optional(temperature_c) : std::nullopt;
}

}  // namespace

SlipBounds slip_bounds(const PressFit& fit, double bench_c) {
  require_value(fit, "fit");
  require_interference(fit.interference_mm, fit.joint_mm, "fit.interference_mm");
  require_temperature(bench_c, "bench_c");
  const std::optional<double> bearable = bearable_mm(fit);
  const double per_k = (fit.inner.expansion_per_k - fit.hub.expansion_per_k) * fit.joint_mm;
  SlipBounds bounds;
  if (!bearable || per_k == 0.0) {
    return bounds;
  }
  const double until = bench_c + std::max(0.0, *bearable - fit.interference_mm) / per_k;
  if (per_k > 0.0 && until <= kTemperature_c.greatest) {
    bounds.hottest_c = until;
  }
  if (per_k < 0.0 && until > kTemperature_c.least) {
    bounds.coldest_c = until;
  }
  return bounds;
}

SlipIn slip_in(const Elastic& hub, const Elastic& inner, double joint_mm, double interference_mm,
               double clearance_mm, double bench_c, const SlipBounds& bounds) {
  require_elastic(hub, "hub");
  require_elastic(inner, "inner");
  require_positive(joint_mm, "joint_mm", "mm");
  require_not_negative(interference_mm, "interference_mm", "mm");
  require_not_negative(clearance_mm, "clearance_mm", "mm");
  require_interference(interference_mm, joint_mm, "interference_mm");
  require_temperature(bench_c, "bench_c");
  require_value(bounds, "bounds");
  const double wanted = interference_mm + clearance_mm;
  // The shaft is the larger of the two by the interference; the hole is taken at the joint.
  const double shaft_mm = joint_mm + interference_mm;
  const double per_k = inner.expansion_per_k * shaft_mm;
  SlipIn slip;
  slip.heat_hub_to_c = allowed(bounds, bench_c + wanted / (hub.expansion_per_k * joint_mm));
  slip.chill_inner_to_c = allowed(bounds, bench_c - wanted / per_k);
  slip.dry_ice_will_do =
      allows(bounds, kDryIce_c) && wanted <= kDryIceShare * per_k * (bench_c - kDryIce_c);
  slip.liquid_nitrogen_will_do =
      allows(bounds, kLiquidNitrogen_c) &&
      wanted <= kLiquidNitrogenShare * per_k * (bench_c - kLiquidNitrogen_c);
  slip.may_soften_hub = slip.heat_hub_to_c.value_or(0.0) > kTemperLimit_c;
  return slip;
}

}  // namespace spotblue
