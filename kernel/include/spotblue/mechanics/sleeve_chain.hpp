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

#include "spotblue/base/export.hpp"
#include "spotblue/mechanics/thick_ring.hpp"

namespace spotblue {

/// A ring with its free sizes at 20 C and the temperature it has now.
struct ChainRing {
  Ring free;
  double temperature_c = 20.0;  ///< > -273.15
};

struct ChainRingState {
  double free_bore_mm = 0.0, free_outside_mm = 0.0;  ///< at its temperature, unloaded
  double bore_mm = 0.0, outside_mm = 0.0;            ///< at its temperature, loaded
  RingState loaded;
};

/// Between one ring and the next outward.
struct InterfaceState {
  double interference_mm = 0.0;  ///< free sizes at temperature, diametral; negative is clearance
  double pressure_mpa = 0.0;     ///< 0 where open
  double gap_mm = 0.0;           ///< diametral, loaded; 0 where they touch
};

struct ChainState {
  std::vector<ChainRingState> rings;       ///< as given
  std::vector<InterfaceState> interfaces;  ///< one less
};

/// @param rings  from the innermost out, at least one; only the innermost may be solid.
/// @throws Error bad_input naming the ring and value out of range.
[[nodiscard]] SPOTBLUE_EXPORT ChainState sleeve_chain(std::span<const ChainRing> rings);

}  // namespace spotblue
