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

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"

namespace spotblue {

struct SuitKnown {
  std::string name;
  Limits limits;
};
constexpr void describe(auto& fields, const SuitKnown*) {
  fields.value("SuitKnown", "A size that exists: all values it may have, mm.")
      .member("name", &SuitKnown::name, "as conflicts show it")
      .member("limits", &SuitKnown::limits, "mm");
}

struct SuitSize {
  std::string name;
  Length drawn;
  std::optional<Limits> own;
  std::string own_by;
  Length uncertainty;
};
constexpr void describe(auto& fields, const SuitSize*) {
  fields.value("SuitSize", "A size still to be made, mm.")
      .member("name", &SuitSize::name, "as conflicts show it")
      .member("drawn_mm", &SuitSize::drawn, "as drawn, mm; anchors what no demand holds")
      .member("own", &SuitSize::own, "limits of its own: a class, a wanted size")
      .member("own_by", &SuitSize::own_by, "who asks for them, for conflicts")
      .member("uncertainty_mm", &SuitSize::uncertainty,
              "of the measurement that will accept it, k = 2, >= 0")
      .range(kFrom0);
}

enum class SuitOf { to_make, known };
constexpr auto describe(const SuitOf*) {
  return words("Whether a term speaks of a size to make or a known one.", "to make", "known");
}

struct SuitTerm {
  SuitOf of = SuitOf::known;
  std::size_t index = 0;
  double factor = 1.0;
};
constexpr void describe(auto& fields, const SuitTerm*) {
  fields.value("SuitTerm", "One size of a demand, times a factor.")
      .member("of", &SuitTerm::of, "to make or known")
      .member("index", &SuitTerm::index, "into the problem's sizes or known")
      .member("factor", &SuitTerm::factor, "1e-6 to 1e6, either sign");
}

struct SuitDemand {
  std::string name;
  std::vector<SuitTerm> terms;
  Length constant;
  Limits wanted;
};
constexpr void describe(auto& fields, const SuitDemand*) {
  fields.value("SuitDemand", "wanted.lower <= constant + sum of factor x size <= wanted.upper.")
      .member("name", &SuitDemand::name,
              "for conflicts: \"H7/s6 of Wheel: bore 38 (job file, line 74)\"")
      .member("terms", &SuitDemand::terms, "the sizes and factors")
      .member("constant_mm", &SuitDemand::constant, "added to the sum, mm")
      .member("wanted", &SuitDemand::wanted, "mm");
}

struct SuitProblem {
  std::vector<SuitSize> sizes;
  std::vector<SuitKnown> known;
  std::vector<SuitDemand> demands;
};
constexpr void describe(auto& fields, const SuitProblem*) {
  fields.value("SuitProblem", "Sizes to make, sizes that exist, and demands.")
      .member("sizes", &SuitProblem::sizes, "still to be made")
      .member("known", &SuitProblem::known, "that exist")
      .member("demands", &SuitProblem::demands, "all must hold");
}

struct SuitWindow {
  std::size_t size = 0;
  int turn = 0;
  int of = 0;
  Limits hold;
  Length target;
  std::optional<Limits> accept;
  double share_left = 0.0;
  std::optional<Limits> first;
  Limits last;
};
constexpr void describe(auto& fields, const SuitWindow*) {
  fields.value("SuitWindow", "What one size must hold, mm.")
      .member("size", &SuitWindow::size, "into the problem's sizes")
      .member("turn", &SuitWindow::turn, "1 for what is best made first")
      .member("of", &SuitWindow::of, "sizes that share demands with it, itself included")
      .member("hold", &SuitWindow::hold,
              "made within these, in any order and without measuring again, every demand holds")
      .member("target_mm", &SuitWindow::target, "middle of hold, mm")
      .member("accept", &SuitWindow::accept,
              "readings that prove it within `hold`: reduced by the uncertainty each side (ISO "
              "14253-1); nothing when the uncertainty uses the window up")
      .member("share_left", &SuitWindow::share_left, "of the window after that, 0 to 1")
      .member("first", &SuitWindow::first,
              "made first, it may be anywhere here and the rest can still be made to suit; nothing "
              "when no demand bounds it")
      .member("last", &SuitWindow::last,
              "made last, when the others are at their targets, off by no more than their "
              "uncertainty where their windows have room for it");
}

struct SuitConflict {
  std::size_t size = 0;
  std::string first;
  std::string second;
  std::vector<std::string> through;
  Length short_by;
};
constexpr void describe(auto& fields, const SuitConflict*) {
  fields.value("SuitConflict", "Demands that cannot hold together, whatever is made.")
      .member("size", &SuitConflict::size, "where they meet, into the problem's sizes")
      .member("first", &SuitConflict::first, "asks for more than `second` allows")
      .member("second", &SuitConflict::second,
              "empty when `first` alone asks more than the sizes that exist are known to")
      .member("through", &SuitConflict::through, "others that carry the two together")
      .member("short_by_mm", &SuitConflict::short_by,
              "> 0: by how much the two miss each other at `size`");
}

struct SuitPlan {
  std::vector<std::optional<SuitWindow>> windows;
  std::vector<SuitConflict> conflicts;
};
constexpr void describe(auto& fields, const SuitPlan*) {
  fields.value("SuitPlan", "Windows of all sizes to make, and conflicts.")
      .member("windows", &SuitPlan::windows,
              "by size; nothing where a conflict stands, where no demand speaks of the size, or "
              "where nothing bounds it")
      .member("conflicts", &SuitPlan::conflicts, "empty when all can hold");
}

/// Finds the windows of all sizes to make.
///
/// `first` is exact, and `hold` is proved against every demand at its worst. Of sizes that share a
/// demand each gets the same tolerance, or one in proportion to its own limits. What is made first:
/// a size whose mates all exist (waiting will not widen its window), then the one with the least
/// room. When a size has been made to `accept` and measured, or anywhere in `first` less its
/// uncertainty where every size has an `accept`, it becomes a known one: then `first` of every
/// other lies within what it was, no conflict can arise and no window is lost.
///
/// Source: interval arithmetic, and linear programmes where demands share several sizes, worked
/// here; ISO 14253-1 for the reduction. Checked by: tests/mechanics/make_to_suit_order_test.cpp,
/// random plans made one size after another.
/// @throws Error bad_input naming the member when limits are reversed, a number is not finite, a
///         factor is not within 1e-6 to 1e6 either way, an index is out of range or an uncertainty
///         is negative.
[[nodiscard]] SPOTBLUE_EXPORT SuitPlan make_to_suit(const SuitProblem& problem);

}  // namespace spotblue
