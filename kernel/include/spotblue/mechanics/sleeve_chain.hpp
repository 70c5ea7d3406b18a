#pragma once
/// @file
/// Rings one in another - shaft in bush in hub - solved together: which interfaces touch, at what
/// pressure, and what every bore and outside comes to.
///
/// Each ring is a thick ring in plane stress (thick_ring.hpp) with free sizes at 20 C that grow by
/// its own expansion. Each interface keeps: pressure >= 0, gap >= 0, one of the two 0 (it may open,
/// and nothing sticks). The gaps fall linearly with the pressures by a matrix whose off-diagonals
/// are <= 0 (pressure on a ring's outside closes its bore), so letting in the interfaces that
/// overlap, solving, and letting in those that then overlap ends at the one solution (the usual
/// scheme for linear complementarity with such matrices).
/// Elastic only; roughness and out-of-round left out; even temperature through each ring.

#include <span>
#include <vector>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/mechanics/thick_ring.hpp"

namespace spotblue {

struct ChainRing {
  Ring free;
  double temperature_c = 20.0;
};
constexpr void describe(auto& fields, const ChainRing*) {
  fields.value("ChainRing", "A ring with its free sizes at 20 C and the temperature it has now.")
      .member("free", &ChainRing::free, "free sizes at 20 C, mm")
      .member("temperature_c", &ChainRing::temperature_c, "degrees C, > -273.15")
      .range(kTemperature_c);
}

struct ChainRingState {
  double free_bore_mm = 0.0, free_outside_mm = 0.0;
  double bore_mm = 0.0, outside_mm = 0.0;
  RingState loaded;
};
constexpr void describe(auto& fields, const ChainRingState*) {
  fields.value("ChainRingState", "A ring of the chain, unloaded and loaded.")
      .member("free_bore_mm", &ChainRingState::free_bore_mm, "at its temperature, unloaded, mm")
      .member("free_outside_mm", &ChainRingState::free_outside_mm, "at its temperature, unloaded")
      .member("bore_mm", &ChainRingState::bore_mm, "at its temperature, loaded, mm")
      .member("outside_mm", &ChainRingState::outside_mm, "the same of its outside, mm")
      .member("loaded", &ChainRingState::loaded, "its stresses, MPa");
}

struct InterfaceState {
  double interference_mm = 0.0;
  double pressure_mpa = 0.0;
  double gap_mm = 0.0;
};
constexpr void describe(auto& fields, const InterfaceState*) {
  fields.value("InterfaceState", "Between one ring and the next outward.")
      .member("interference_mm", &InterfaceState::interference_mm,
              "of free sizes at temperature, diametral, mm; negative is clearance")
      .member("pressure_mpa", &InterfaceState::pressure_mpa, "MPa, 0 where open")
      .member("gap_mm", &InterfaceState::gap_mm, "diametral, loaded; 0 where they touch");
}

struct ChainState {
  std::vector<ChainRingState> rings;
  std::vector<InterfaceState> interfaces;
};
constexpr void describe(auto& fields, const ChainState*) {
  fields.value("ChainState", "Rings one in another, solved together.")
      .member("rings", &ChainState::rings, "as given, from the innermost out")
      .member("interfaces", &ChainState::interfaces, "one less than rings");
}

/// @param rings  from the innermost out, at least one; only the innermost may be solid.
/// @throws Error bad_input naming the ring and value out of range.
[[nodiscard]] SPOTBLUE_EXPORT ChainState sleeve_chain(std::span<const ChainRing> rings);

}  // namespace spotblue
