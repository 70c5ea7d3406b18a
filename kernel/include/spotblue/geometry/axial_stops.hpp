#pragma once
/// @file
/// Which plane faces stop which parts along a centre line, at any gap.

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/seats.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

struct AxialStop {
  FeatureRef a;
  FeatureRef b;
  double gap = 0.0;
  double area = 0.0;
  std::optional<std::size_t> seat{};
};
constexpr void describe(auto& fields, const AxialStop*) {
  fields
      .value("AxialStop",
             "Two faces square to a centre line that look at each other and share area seen along "
             "it.")
      .member("a", &AxialStop::a, "looks along the line")
      .member("b", &AxialStop::b, "looks against it")
      .member("gap_mm", &AxialStop::gap, "negative where the parts overlap")
      .member("area_mm2", &AxialStop::area, "that the two share; of an axial seat, its own")
      .member("seat", &AxialStop::seat,
              "number of the axial seat, from 0, of stops within its gap limits, or None");
}

/// The nearest stop of every two parts of different groups, each way, by centre line.
///
/// Within the gap limits of seats these are the model's axial seats; beyond, every face is tried
/// against those that look at it from farther off, nearest first, and the three nearest it meets
/// are kept: what is farther lies behind them.
///
/// @param group_of  by occurrence; parts of one group do not stop each other.
/// Plane faces only: cones, fillets and screw threads that would stop a part are not seen.
/// Cost grows with the plane faces of the parts on a line, not with their pairs.
/// Thread-safe. Touches no state of Open CASCADE's.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<std::vector<AxialStop>> find_axial_stops(
    const Model& model, const Seats& seats, std::span<const std::size_t> group_of,
    const SeatSettings& settings);

/// Where a plane face crosses the line, mm from line.at along it; the face must not be parallel to
/// it.
[[nodiscard]] SPOTBLUE_EXPORT double station_of_face(const Model& model, const FeatureRef& face,
                                                     const Line& line);

/// Plane faces of an occurrence square to the line within the facing tilt, in order.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<FeatureRef> faces_square_to(const Model& model,
                                                                      OccurrenceId occurrence,
                                                                      const Line& line,
                                                                      const SeatSettings& settings);

}  // namespace spotblue
