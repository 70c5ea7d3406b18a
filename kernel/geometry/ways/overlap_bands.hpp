#pragma once
/// @file
/// Radii at which two parts overlap by a thread or a press fit that they have.

#include <optional>

#include "geometry/outline/passing.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue::proof {

[[nodiscard]] OverlapBand band_of(const Thread& thread);
/// All round, as parts are looked at about a line; nothing for a seat that is clear.
[[nodiscard]] std::optional<OverlapBand> band_of(const RadialSeat& seat);

}  // namespace spotblue::proof
