#pragma once
// A hole and a shaft that may be a seat, before anyone asks what lies between them. Everything in
// the first product's frame.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "geometry/faces/worn.hpp"
#include "geometry/model/arcs.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

enum class Which { first, second };

// What a worn pair measures at a station of the hole's axis, even between two of them.
struct WornAt {
  double at = 0.0;
  Interval hole, shaft;
};

// A cylinder of each, near-coaxial and sharing a length.
struct RadialCandidate {
  Which hole_of = Which::first;                      // which product has the hole
  std::size_t hole = 0, shaft = 0;                   // indexes into the products' cylinders
  double hole_diameter = 0.0, shaft_diameter = 0.0;  // of a worn pair where it is tightest
  std::vector<WornAt> worn;                          // of a worn pair, ascending; else none
  double tilt = 0.0;
  Stretches stretches;  // shared, on `axis`
  // Shared surface, stretch by stretch; angles counted from `zero` towards `quarter`.
  std::vector<Patch> pieces;
  Line axis;  // the hole's
  Line shaft_axis;
  Direction zero, quarter;
  std::string thread;  // size, where it is a screw in a tapped hole
};

// How the axes lie over pieces of a candidate's surface: distance at the middle of them all, and
// the hole's radius less the greatest distance of the shaft's surface from the hole's axis, at the
// angles of the pieces.
struct Alignment {
  double offset = 0.0, least_gap = 0.0;
};
[[nodiscard]] Alignment alignment(const RadialCandidate& candidate,
                                  const std::vector<Patch>& pieces);

// What a worn pair measures over stretches of the hole's axis.
struct WornOver {
  Interval hole, shaft;
  double least_clearance = 0.0, most_clearance = 0.0;
};
[[nodiscard]] WornOver worn_over(const RadialCandidate& candidate, const Stretches& stretches);

// One hole against one shaft, both in one frame; the unit of cost of the whole search.
[[nodiscard]] std::optional<RadialCandidate> radial_candidate(const Cylinder& hole,
                                                              const Frame& hole_frame,
                                                              const Cylinder& shaft,
                                                              const Frame& shaft_frame,
                                                              const SeatSettings& settings);

}  // namespace spotblue
