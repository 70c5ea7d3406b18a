#pragma once
/// @file
/// Overlap of two solids that no seat, thread or allowance accounts for, and contact that none
/// tells.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue {

/// One region in which two occurrences share material.
struct Clash {
  OccurrenceId a{}, b{};  ///< occurrences, a < b
  double volume = 0.0;    ///< mm3
  /// How deep metal is in metal, mm: of the longest straight way through the overlap, taken square
  /// to the parts' faces, along and across their axes, the least.
  double depth = 0.0;
  /// How far it goes along the axis, or square to the depth, mm; none: not known.
  std::optional<double> length{};
  /// A point inside the overlap, assembly frame; none where none is known.
  std::optional<Point> at{};
  /// Volume from a closed form, or a checked boolean of plane, cylinder, cone, sphere and torus
  /// faces.
  bool exact = true;
  /// "off axis"; "press fit off axis" and "taper off axis", of which the numbers tell only what is
  /// deeper than such a seat may be; "faces overlap", "solids overlap", "undecided: ...".
  std::string cause;
  /// Whether the two share material is not known; `cause` says why.
  [[nodiscard]] bool undecided() const { return cause.starts_with("undecided"); }
};

/// A cylinder that overlaps the hole it stands in as a screw does, and yet is no thread: a clash.
struct UnnamedScrew {
  FeatureRef hole, screw;
  std::string thread;  ///< whose sizes it has, less than a turn engaged; empty: none of the tables'
};

/// Two occurrences that touch, or stand one in the other with no more between than a seat has,
/// where no seat, thread or clash says how: a ball in its socket, a shaft in a vee, cones of two
/// angles.
struct Contact {
  OccurrenceId a{}, b{};        ///< occurrences, a < b
  std::optional<double> gap{};  ///< least distance, mm; none where it could not be measured
  std::optional<Point> at{};    ///< on a, where they come nearest, assembly frame
  /// The faces there: "plane", "cylinder", "cone", "sphere", "torus" or "free form"; empty without
  /// a gap.
  std::string a_face{}, b_face{};
  std::string why{};  ///< one line, where the gap could not be measured
};

/// How the clash search decided, for the notes and the benchmark.
struct ClashEffort {
  std::size_t pairs = 0;           ///< near pairs looked at
  std::size_t distinct_pairs = 0;  ///< by (product, product, relative placement)
  std::size_t exact_pairs = 0;     ///< that needed Open CASCADE's exact boolean, contacts aside
};

struct ClashReport {
  std::vector<Clash> clashes;
  /// Of each pair the nearest: what bears there is not judged.
  std::vector<Contact> contacts;
  /// Pairs, first < second, for which the time given to the look was up: they may clash.
  std::vector<OccurrencePair> not_looked_at;
  std::vector<UnnamedScrew> unnamed_screws;
  std::vector<Note> notes;
  ClashEffort effort;
};

/// Finds every clash among seats.near_pairs, and what touches there at no seat.
///
/// One clash for each region of each pair. A seat that fouls (fouls_by > 0) and an axial seat with
/// a negative gap are clashes too. Press fits, threads and tapers within the seat limits, up to
/// where they end, are not; nor is what is no deeper than the file's own uncertainty.
/// @throws Error open_cascade_failed never: a pair Open CASCADE cannot decide is a note and a Clash
/// with
///         exact = false and cause "undecided: ...".
[[nodiscard]] SPOTBLUE_EXPORT ClashReport find_clashes(const Model& model, const Seats& seats,
                                                       const SeatSettings& settings,
                                                       const ReadLimits& limits);

}  // namespace spotblue
