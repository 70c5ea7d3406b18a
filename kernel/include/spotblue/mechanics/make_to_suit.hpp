#pragma once
/// @file
/// The limits that sizes still to be made must hold so that every fit they take part in comes out,
/// whatever the sizes that exist may be within their uncertainty.
///
/// A demand is a sum of sizes, each times a factor, that must lie between two limits: a clearance
/// is hole - shaft; the clearance of a bush once pressed is bore - k x (outside - hub) - shaft, k
/// being how much the bore closes for each unit of interference.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"

namespace spotblue {

/// A size that exists: all values it may have.
struct SuitKnown {
  std::string name;
  Limits limits;
};

/// A size still to be made.
struct SuitSize {
  std::string name;
  Length drawn;               ///< as drawn; anchors what no demand holds
  std::optional<Limits> own;  ///< limits of its own: a class, a wanted size
  std::string own_by;         ///< who asks for them, for conflicts
  Length uncertainty;         ///< of the measurement that will accept it, k = 2, >= 0
};

enum class SuitOf { to_make, known };

struct SuitTerm {
  SuitOf of = SuitOf::known;
  std::size_t index = 0;  ///< into the problem's sizes or known
  double factor = 1.0;
};

/// wanted.lower <= constant + sum of factor x size <= wanted.upper.
struct SuitDemand {
  std::string name;  ///< for conflicts: "H7/s6 of Wheel: bore 38 (job file, line 74)"
  std::vector<SuitTerm> terms;
  Length constant;
  Limits wanted;
};

struct SuitProblem {
  std::vector<SuitSize> sizes;
  std::vector<SuitKnown> known;
  std::vector<SuitDemand> demands;
};

/// What one size must hold.
struct SuitWindow {
  std::size_t size = 0;  ///< into the problem's sizes
  int turn = 0;          ///< 1 for what is best made first
  int of = 0;            ///< sizes that share demands with it, itself included
  /// Made within these, in any order and without measuring again, every demand holds.
  Limits hold;
  Length target;  ///< middle of `hold`
  /// Readings that prove it within `hold`: reduced by the uncertainty each side (ISO 14253-1);
  /// nothing when the uncertainty uses the window up.
  std::optional<Limits> accept;
  double share_left = 0.0;  ///< of the window after that, 0 to 1
  /// Made first, it may be anywhere here and the rest can still be made to suit; nothing when no
  /// demand bounds it.
  std::optional<Limits> first;
  /// Made last, when the others are at their targets and measured.
  Limits last;
};

/// Demands that cannot hold together, whatever is made.
struct SuitConflict {
  std::size_t size = 0;  ///< where they meet
  std::string first;     ///< asks for more than `second` allows
  /// Empty when `first` alone asks more than the sizes that exist are known to.
  std::string second;
  std::vector<std::string> through;  ///< others that carry the two together
  Length short_by;                   ///< > 0: by how much the two miss each other at `size`
};

struct SuitPlan {
  /// By size; nothing where a conflict stands, where no demand speaks of the size, or where demands
  /// that share several sizes left no windows that could be proved.
  std::vector<std::optional<SuitWindow>> windows;
  std::vector<SuitConflict> conflicts;
};

/// Finds the windows of all sizes to make.
///
/// `first` is exact where no two demands share more than one size still to be made, and a little
/// wide where they do; `hold` is proved against every demand at its worst in every case. Of sizes
/// that share a demand each gets the same tolerance, or one in proportion to its own limits. What
/// is made first: a size whose mates all exist (waiting will not widen its window), then the one
/// with the least room. When a size has been made to `accept` and measured, it becomes a known one:
/// then `first` of every other lies within what it was, and no conflict can arise.
///
/// Source: interval arithmetic, worked here; ISO 14253-1 for the reduction.
/// @throws Error bad_input naming the demand or size when limits are reversed, a factor is zero or
///         not finite, an index is out of range or an uncertainty is negative.
[[nodiscard]] SPOTBLUE_EXPORT SuitPlan make_to_suit(const SuitProblem& problem);

}  // namespace spotblue
