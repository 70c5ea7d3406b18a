#pragma once
// The half section of a turned part in the (z, r) plane.

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "spotblue/geometry/mockup_part.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

/// Stations nearer than this are one, mm.
inline constexpr double kSameStation = 1e-9;

struct ProfilePoint {
  double z = 0.0;
  double r = 0.0;
  /// Set when the way here from the point before is an arc: its middle, {z, r}.
  std::optional<std::pair<double, double>> by;
};

/// Length of a turned part, mm.
[[nodiscard]] double turned_length(const TurnedPart& part);

/// Radius of the outside at a station, without breaks and grooves; at a shoulder the greater.
[[nodiscard]] double outside_radius(const TurnedPart& part, double z);
/// Radius of the inside there, 0 where the part is solid; at a shoulder the greater.
[[nodiscard]] double inside_radius(const TurnedPart& part, double z);

/// What bounds one end of a step: the neighbour's radius, 0 at the bottom of a blind bore, or
/// nothing where the part itself ends.
[[nodiscard]] std::optional<double> neighbour_radius(const TurnedPart& part, Side side,
                                                     std::size_t step, int end);

/// The way along the outside or inside from the first end to the last, both at the very ends; where
/// the part is solid the inside runs along r = 0.
[[nodiscard]] std::vector<ProfilePoint> profile_path(const TurnedPart& part, Side side);

}  // namespace spotblue
