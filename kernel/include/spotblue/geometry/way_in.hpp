#pragma once
/// @file
/// Whether the parts on a centre line can be brought to their places, past each other, and in which
/// order.

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue {

/// Two occurrences that share metal where they stand, as found or as meant.
struct GivenOverlap {
  OccurrenceId a{}, b{};
  double depth = 0.0;  ///< mm, how far they would have to move to come clear
};

/// What the shapes do not show.
struct WayInOptions {
  /// Occurrences that are sprung in by hand: a bore or shoulder up to a tenth smaller lets them
  /// pass (common practice, no source).
  std::vector<OccurrenceId> springs;
  std::vector<OccurrencePair> pressed;  ///< pairs pressed together
  std::vector<GivenOverlap> given;      ///< clashes as found: moving apart is no block
  std::vector<GivenOverlap> squeezed;   ///< meant overlaps: a squeeze that deep is no block
};

/// How a step is done.
enum class WayHow { slide, press, screw, spring_in, drop_in };

/// A part, or parts already put together, brought to its place.
struct WayStep {
  std::vector<OccurrenceId> parts;  ///< occurrences; the greatest first
  Direction along;                  ///< the way it goes in, unit, assembly frame
  WayHow how = WayHow::slide;
  OccurrenceId onto{};  ///< the occurrence it joins: pressed, screwed or seated on, or the base
  std::vector<OccurrenceId> holds;  ///< parts in place before that can leave no more
};

/// Proof that a part cannot pass another along the centre line.
struct Blockage {
  OccurrenceId part{}, by{};
  Direction leaving;            ///< the way out that is shut; the way in is the opposite
  double needs = 0.0;           ///< diameter, mm, that has to pass ...
  std::optional<double> has{};  ///< ... and the bore it would have to pass; none: no hole at all
};

/// Parts that may pass each other or not: their outlines about the line overlap, their metal
/// perhaps does not.
struct NotTold {
  OccurrenceId part{}, by{};
  Direction leaving;
};

/// The parts that share a centre line, with parallel lines that join two or more of the same parts,
/// and the keys seated on them.
struct WayIn {
  std::vector<CentreLineId> centre_lines;  ///< indexes into Seats::centre_lines, the main one first
  std::vector<OccurrenceId> parts;         ///< occurrences, ascending
  OccurrenceId base{};                     ///< the occurrence the others are brought to
  std::vector<WayStep> steps;              ///< in order of assembly; all but those that have no way
  std::vector<Blockage> blocked;           ///< of parts that have no way in
  std::vector<NotTold> not_told;           ///< what steps were taken on trust
  bool too_many = false;                   ///< more parts than are looked at (150)
};

/// One for each group of centre lines, in order of their first line.
///
/// Parts move along the line, either way, keys also straight out of their keyseats; a group of
/// parts may move as one. Parts are seen as rings about the line: a turned part exactly, any other
/// as all that it may occupy (for "free") and all it occupies for certain (for "blocked"). Metal
/// that overlaps by less than 1e-4 mm counts as clear. Threads turn their way through, press fits
/// press; parts of other groups are taken as not there.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<WayIn> ways_in(const Model& model, const Seats& seats,
                                                         const WayInOptions& options);

}  // namespace spotblue
