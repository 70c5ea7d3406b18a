#include "geometry/ways/overlap_bands.hpp"

#include <algorithm>

namespace spotblue::proof {
namespace {

/// A band reaches so far beyond the two surfaces.
constexpr double kBeyond = 1e-6;

}  // namespace

OverlapBand band_of(const Thread& thread) {
  return {0.5 * thread.hole_diameter - thread.offset - kBeyond,
          0.5 * thread.screw_diameter + thread.offset + kBeyond,
          {},
          {}};
}

// It may be less all round where only one of the two has surface.
std::optional<OverlapBand> band_of(const RadialSeat& seat) {
  const double spread = seat.worn ? seat.worn->most - seat.worn->least : 0.0;
  if (std::min(seat.least_gap, 0.5 * (seat.clearance - spread) - seat.offset) >= 0.0) {
    return std::nullopt;
  }
  return OverlapBand{0.5 * (seat.hole_diameter - spread) - seat.offset - kBeyond,
                     0.5 * (seat.shaft_diameter + spread) + seat.offset + kBeyond,
                     {},
                     {}};
}

}  // namespace spotblue::proof
