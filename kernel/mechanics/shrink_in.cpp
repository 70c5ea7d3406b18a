#include "spotblue/mechanics/shrink_in.hpp"

#include "base/require.hpp"
#include "mechanics/require.hpp"

namespace spotblue {

SlipIn slip_in(const Elastic& hub, const Elastic& inner, double joint_mm, double interference_mm,
               double clearance_mm, double bench_c) {
  require_elastic(hub, "hub");
  require_elastic(inner, "inner");
  require_positive(joint_mm, "joint_mm", "mm");
  require_not_negative(interference_mm, "interference_mm", "mm");
  require_not_negative(clearance_mm, "clearance_mm", "mm");
  require_interference(interference_mm, joint_mm, "interference_mm");
  require_temperature(bench_c, "bench_c");
  const double wanted = interference_mm + clearance_mm;
  // The shaft is the larger of the two by the interference; the hole is taken at the joint.
  const double shaft_mm = joint_mm + interference_mm;
  const double per_k = inner.expansion_per_k * shaft_mm;
  SlipIn slip;
  slip.heat_hub_to_c = bench_c + wanted / (hub.expansion_per_k * joint_mm);
  slip.chill_inner_to_c = bench_c - wanted / per_k;
  slip.dry_ice_will_do = wanted <= kDryIceShare * per_k * (bench_c - kDryIce_c);
  slip.liquid_nitrogen_will_do =
      wanted <= kLiquidNitrogenShare * per_k * (bench_c - kLiquidNitrogen_c);
  slip.may_soften_hub = slip.heat_hub_to_c > kTemperLimit_c;
  return slip;
}

}  // namespace spotblue
