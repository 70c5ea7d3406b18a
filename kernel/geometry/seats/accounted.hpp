#pragma once
/// @file
/// Where a pair of parts may share material because a seat says so: rings of press fits, threads
/// and tapers, and bands between planes that overlap by a known amount. In the first part's frame.

#include <span>
#include <vector>

#include "spotblue/geometry/seats.hpp"

namespace spotblue::proof {

/// A ring about a line between two radii that change evenly along it.
struct Ring {
  Line axis;
  double from = 0.0, to = 0.0;  ///< stations on the axis, mm
  double inner_from = 0.0, inner_to = 0.0;
  double outer_from = 0.0, outer_to = 0.0;
};

/// What lies between two parallel planes: low <= dot(normal, x - at) <= high.
struct Band {
  Point at;
  Direction normal;
  double low = 0.0, high = 0.0;
};

struct Accounted {
  std::vector<Ring> rings;
  std::vector<Band> bands;
  /// Axes of every seat of the pair, whether or not anything overlaps there.
  std::vector<Line> axes;
};

/// The seats of one pair of occurrences, as indexes into the lists of Seats.
struct PairSeats {
  std::vector<std::size_t> radial, axial, taper, width, threads;
};

/// Whether what a foul that is told by itself overlaps counts as accounted for too.
enum class Told { apart, too };

/// What the pair's seats account for, seen from the frame that `to_a` leads to (assembly to A).
[[nodiscard]] Accounted account_for(const Model& model, const Seats& seats, const PairSeats& pair,
                                    const SeatSettings& settings, const Frame& to_a, Told told);

/// Whether one of the rings or bands, grown by so much on every side, holds all the points.
[[nodiscard]] bool one_holds_all(const Accounted& accounted, std::span<const Point> points,
                                 double grown);

/// Whether the two cones overlap all round, as far as offset and tilt are left aside.
[[nodiscard]] bool is_pressed(const TaperSeat& seat, const SeatSettings& settings);

/// Whether the two faces overlap.
[[nodiscard]] bool overlaps(const AxialSeat& seat, const SeatSettings& settings);

}  // namespace spotblue::proof
