#include "spotblue/mechanics/thick_ring.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "base/require.hpp"
#include "mechanics/require.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

SurfaceStress surface(double hoop, double radial) {
  return {hoop, radial, std::sqrt(hoop * hoop - hoop * radial + radial * radial)};
}

double change_of_diameter(const SurfaceStress& stress, double diameter, const Elastic& material) {
  return diameter / material.youngs_modulus_mpa *
         (stress.hoop_mpa - material.poisson_ratio * stress.radial_mpa);
}

void require_load(const Ring& ring, const RingLoad& load) {
  require_value(load, "load");
  if (ring.inner_mm == 0.0 && load.inside_mpa != 0.0) {
    throw Error(ErrorCode::bad_input, {"", "load.inside_mpa"},
                fmt::format("a solid disc has no bore to press on, got {} MPa", load.inside_mpa),
                "give the bore, or no inside pressure");
  }
}

}  // namespace

void require_ring(const Ring& ring, const std::string& argument) {
  require_value(ring, argument);
  require_elastic(ring.material, argument + ".material");
  if (ring.inner_mm >= ring.outer_mm) {
    throw Error(
        ErrorCode::bad_input, {"", argument + ".inner_mm"},
        fmt::format("need less than the outside ({} mm), got {} mm", ring.outer_mm, ring.inner_mm),
        "check which diameter is the bore");
  }
}

RingState loaded_ring(const Ring& ring, const RingLoad& load) {
  require_ring(ring, "ring");
  require_load(ring, load);
  const double inner2 = ring.inner_mm * ring.inner_mm;
  const double outer2 = ring.outer_mm * ring.outer_mm;
  const double wall2 = (ring.outer_mm - ring.inner_mm) * (ring.outer_mm + ring.inner_mm);
  // hoop = even + part * inner2 / d^2, radial = even - part * inner2 / d^2
  const double even = (load.inside_mpa * inner2 - load.outside_mpa * outer2) / wall2;
  const double part = (load.inside_mpa - load.outside_mpa) * outer2 / wall2;
  const double at_bore = ring.inner_mm > 0.0 ? part : 0.0;
  const double at_outside = part * inner2 / outer2;
  RingState state;
  state.bore = surface(even + at_bore, even - at_bore);
  state.outside = surface(even + at_outside, even - at_outside);
  state.bore_change_mm = change_of_diameter(state.bore, ring.inner_mm, ring.material);
  state.outside_change_mm = change_of_diameter(state.outside, ring.outer_mm, ring.material);
  return state;
}

std::optional<double> utilisation(const SurfaceStress& stress, const Elastic& material) {
  require_value(stress, "stress");
  require_elastic(material, "material");
  if (material.gives_way == GivesWay::brittle) {
    if (!material.tensile_mpa) {
      return std::nullopt;
    }
    return std::max({stress.hoop_mpa, stress.radial_mpa, 0.0}) / *material.tensile_mpa;
  }
  if (!material.yield_mpa) {
    return std::nullopt;
  }
  return stress.equivalent_mpa / *material.yield_mpa;
}

}  // namespace spotblue
