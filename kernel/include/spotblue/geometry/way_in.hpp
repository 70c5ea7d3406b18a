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
  std::size_t a = 0, b = 0;
  double depth = 0.0;  ///< mm, how far they would have to move to come clear
};

/// What the shapes do not show.
struct WayInOptions {
  /// Occurrences that are sprung in by hand: a bore or shoulder up to a tenth smaller lets them
  /// pass (common practice, no source).
  std::vector<std::size_t> springs;
  std::vector<std::pair<std::size_t, std::size_t>> pressed;  ///< pairs pressed together
  std::vector<GivenOverlap> given;     ///< clashes as found: moving apart is no block
  std::vector<GivenOverlap> squeezed;  ///< meant overlaps: a squeeze that deep is no block
};

/// How a step is done.
enum class WayHow { slide, press, screw, spring_in, drop_in };

/// A part, or parts already put together, brought to its place.
struct WayStep {
  std::vector<std::size_t> parts;  ///< occurrences; the greatest first
  Direction along;                 ///< the way it goes in, unit, assembly frame
  WayHow how = WayHow::slide;
  std::size_t onto = 0;  ///< the occurrence it joins: pressed, screwed or seated on, or the base
  std::vector<std::size_t> holds;  ///< parts in place before that can leave no more
};

/// Proof that a part cannot pass another along the centre line.
struct Blockage {
  std::size_t part = 0, by = 0;
  Direction leaving;   ///< the way out that is shut; the way in is the opposite
  double needs = 0.0;  ///< diameter, mm, that has to pass ...
  double has = 0.0;    ///< ... and the bore it would have to pass; 0: no hole at all
};

/// Parts that may pass each other or not: their outlines about the line overlap, their metal
/// perhaps does not.
struct NotTold {
  std::size_t part = 0, by = 0;
  Direction leaving;
};

/// The parts that share a centre line, with parallel lines that join two or more of the same parts,
/// and the keys seated on them.
struct WayIn {
  std::vector<std::size_t> centre_lines;  ///< indexes into Seats::centre_lines, the main one first
  std::vector<std::size_t> parts;         ///< occurrences, ascending
  std::size_t base = 0;                   ///< the occurrence the others are brought to
  std::vector<WayStep> steps;             ///< in order of assembly; all but those that have no way
  std::vector<Blockage> blocked;          ///< of parts that have no way in
  std::vector<NotTold> not_told;          ///< what steps were taken on trust
  bool too_many = false;                  ///< more parts than are looked at (150)
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
