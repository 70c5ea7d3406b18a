#pragma once
/// @file
/// Whether the parts on a centre line can be brought to their places, past each other, and in which
/// order.

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/words.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue {

struct GivenOverlap {
  OccurrenceId a{}, b{};
  double depth = 0.0;
};
constexpr void describe(auto& fields, const GivenOverlap*) {
  fields
      .value("GivenOverlap",
             "Two occurrences that share metal where they stand, as found or as meant.")
      .member("a", &GivenOverlap::a, "number of the occurrence, from 0")
      .member("b", &GivenOverlap::b, "number of the occurrence, from 0")
      .member("depth_mm", &GivenOverlap::depth, "how far they would have to move to come clear");
}

struct WayInOptions {
  std::vector<OccurrenceId> springs;
  std::vector<OccurrenceId> opens;
  std::vector<OccurrencePair> pressed;
  std::vector<GivenOverlap> given;
  std::vector<GivenOverlap> squeezed;
};
constexpr void describe(auto& fields, const WayInOptions*) {
  fields.value("WayInOptions", "What the shapes do not show.")
      .member("springs", &WayInOptions::springs,
              "occurrences that are sprung in by hand: a bore or shoulder up to a tenth smaller "
              "lets them pass (common practice, no source)")
      .member("opens", &WayInOptions::opens,
              "occurrences in halves, and soft ones: nothing blocks them and they block nothing")
      .member("pressed", &WayInOptions::pressed, "pairs pressed together")
      .member("given", &WayInOptions::given, "fouls as found: moving apart is no block")
      .member("squeezed", &WayInOptions::squeezed,
              "meant overlaps: a squeeze that deep is no block");
}

/// How a step is done.
enum class WayHow { slide, press, screw, spring_in, drop_in };
constexpr auto describe(const WayHow*) {
  return words("How a part goes to its place.", "slide", "press", "screw", "spring in", "drop in");
}

struct WayStep {
  std::vector<OccurrenceId> parts;
  Direction along;
  WayHow how = WayHow::slide;
  OccurrenceId onto{};
  std::vector<OccurrenceId> holds;
};
constexpr void describe(auto& fields, const WayStep*) {
  fields.value("WayStep", "A part, or parts already put together, brought to its place.")
      .member("parts", &WayStep::parts, "occurrences; the greatest first")
      .member("along", &WayStep::along, "the way it goes in, 1 long, assembly's frame")
      .member("how", &WayStep::how, "slide, press, screw, spring in or drop in")
      .member("onto", &WayStep::onto,
              "the occurrence it joins: pressed, screwed or seated on, or the base")
      .member("holds", &WayStep::holds, "parts in place before that can leave no more");
}

struct Blockage {
  OccurrenceId part{}, by{};
  Direction leaving;
  double needs = 0.0;
  std::optional<double> has{};
};
constexpr void describe(auto& fields, const Blockage*) {
  fields.value("Blockage", "Proof that a part cannot pass another along the centre line.")
      .member("part", &Blockage::part, "occurrence")
      .member("by", &Blockage::by, "occurrence")
      .member("leaving", &Blockage::leaving, "the way out that is shut; the way in is the opposite")
      .member("needs_mm", &Blockage::needs, "diameter that has to pass")
      .or_0("has_mm", &Blockage::has, "the bore it would have to pass");
}

struct NotTold {
  OccurrenceId part{}, by{};
  Direction leaving;
};
constexpr void describe(auto& fields, const NotTold*) {
  fields
      .value("NotTold",
             "Parts that may pass each other or not: their outlines about the line overlap, their "
             "metal perhaps does not.")
      .member("part", &NotTold::part, "occurrence")
      .member("by", &NotTold::by, "occurrence")
      .member("leaving", &NotTold::leaving, "the way out");
}

struct WayIn {
  std::vector<CentreLineId> centre_lines;
  std::vector<OccurrenceId> parts;
  OccurrenceId base{};
  std::vector<OccurrencePair> together;
  std::vector<WayStep> steps;
  std::vector<Blockage> blocked;
  std::vector<NotTold> not_told;
  bool too_many = false;
};
constexpr void describe(auto& fields, const WayIn*) {
  fields
      .value("WayIn",
             "How the parts go together that share a centre line, with parallel lines that join "
             "two or more of the same parts, and the keys seated on them.")
      .member("centre_lines", &WayIn::centre_lines, "numbers, the main one first")
      .member("parts", &WayIn::parts, "occurrences, ascending")
      .member("base", &WayIn::base, "the occurrence the others are brought to")
      .member("together", &WayIn::together,
              "pairs of them that stand in one another along another direction: they are put "
              "together before, and move as one here")
      .member("steps", &WayIn::steps, "in order of assembly; all but those that have no way")
      .member("blocked", &WayIn::blocked, "of parts that have no way in")
      .member("not_told", &WayIn::not_told, "what steps were taken on trust")
      .member("too_many", &WayIn::too_many, "more parts than are looked at (150)");
}

/// One for each group of centre lines, in order of their first line. A line that only holes share,
/// as oil holes that meet do, is none that anything goes in along.
///
/// Parts move along the line, either way, keys also straight out of their keyseats; a group of
/// parts may move as one. Parts are seen as rings about the line: a turned part exactly, any other
/// as all that it may occupy (for "free") and all it occupies for certain (for "blocked"). Metal
/// that overlaps by less than 1e-4 mm counts as clear. Threads turn their way through, press fits
/// press; parts of other groups are taken as not there.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<WayIn> ways_in(const Model& model, const Seats& seats,
                                                         const WayInOptions& options);

}  // namespace spotblue
