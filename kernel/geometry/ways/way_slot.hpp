#pragma once
/// @file
/// What a keyseat or keyway leaves free of the part it is in, told from a line.

#include <optional>

#include "geometry/faces/face_bounds.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue::proof {

/// Sine of the angle within which two directions of a way in are one.
inline constexpr double kWayParallel = 1e-4;

/// The stretch told from another zero.
[[nodiscard]] Interval told_from(Interval span, double zero);

/// A slot seen square to the line: what it leaves free of the part it is in.
struct Slot {
  Direction across;               ///< square to its sides
  Direction out;                  ///< square to the line and to `across`, away from the line
  Interval z;                     ///< along the line, from its at
  double floor = 0.0, top = 0.0;  ///< distances from the line's plane across
  double half = 0.0;              ///< width
};

/// The slot (a width feature) told from the line; nothing when it does not run along it.
[[nodiscard]] std::optional<Slot> slot_about(const Model& model, const FeatureRef& feature,
                                             const Line& line);

}  // namespace spotblue::proof
