#pragma once
// Whether a radial seat is pressed: the one answer, for whoever asks.

#include "group/sizes/seat_sizes.hpp"
#include "spotblue/group/pressing.hpp"

namespace spotblue {

/// By the fit that is wanted; where none is, by the sizes: certain at all of them, possible where
/// the sizes themselves and not only the uncertainty of measurement have interference. A wanted
/// clearance fit that the sizes miss is no press fit: the fit's finding says so.
[[nodiscard]] Pressing pressing_of(const SeatSizes& sizes);

}  // namespace spotblue
