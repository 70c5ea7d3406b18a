#pragma once
/// @file
/// How the numbers of SeatSettings are held against what is measured: every limit holds up to and
/// including, within the least length that counts.

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

/// Greatest distance of the axes of a seat of that diameter, mm.
[[nodiscard]] SPOTBLUE_EXPORT double most_offset(const SeatSettings& settings, double diameter);

/// Greatest radial gap of a seat of that diameter, mm.
[[nodiscard]] SPOTBLUE_EXPORT double most_radial_gap(const SeatSettings& settings, double diameter);

/// Greatest radial overlap of a press fit of that diameter, mm.
[[nodiscard]] SPOTBLUE_EXPORT double most_overlap(const SeatSettings& settings, double diameter);

/// Whether a length, mm, is more than a limit; one that is only nearer to it than
/// settings.same_length_mm is not.
[[nodiscard]] SPOTBLUE_EXPORT bool is_past(double length, double limit,
                                           const SeatSettings& settings);

/// Whether a gap between two faces, mm, negative where they overlap, is none of an axial seat.
[[nodiscard]] SPOTBLUE_EXPORT bool is_past_facing(double gap, const SeatSettings& settings);

/// A limit of angle given in degrees, in rad, and as much more as comes to settings.same_length_mm
/// over a metre: what is leant by that is within the limit.
[[nodiscard]] SPOTBLUE_EXPORT double most_tilt(double limit_deg, const SeatSettings& settings);

}  // namespace spotblue
