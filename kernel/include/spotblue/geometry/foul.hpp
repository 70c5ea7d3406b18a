#pragma once
/// @file
/// Overlap of two solids that no seat, thread or allowance accounts for, and contact that none
/// tells.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue {

struct Foul {
  OccurrenceId a{}, b{};
  double volume = 0.0;
  double depth = 0.0;
  std::optional<double> length{};
  std::optional<Point> at{};
  bool exact = true;
  std::string cause;
  [[nodiscard]] bool undecided() const { return cause.starts_with("undecided"); }
};
constexpr void describe(auto& fields, const Foul*) {
  fields.value("Foul", "One region in which two occurrences share material.")
      .member("a", &Foul::a, "number of the occurrence, from 0")
      .member("b", &Foul::b, "number of the occurrence, from 0, over a's")
      .member("volume_mm3", &Foul::volume, "shared")
      .range(kFrom0)
      .member("depth_mm", &Foul::depth,
              "how deep metal is in metal: of the longest straight way through the overlap, taken "
              "square to the parts' faces, along and across their axes, the least")
      .range(kFrom0)
      .or_0("length_mm", &Foul::length, "how far it goes along the axis, or square to the depth")
      .range(kOver0)
      .member("at", &Foul::at,
              "a point inside the overlap, assembly's frame; nothing where none is known")
      .member("exact", &Foul::exact,
              "volume from a closed form, or a checked boolean of plane, cylinder, cone, sphere "
              "and torus faces")
      .member("cause", &Foul::cause,
              "\"off axis\"; \"press fit off axis\" and \"taper off axis\", of which the numbers "
              "tell only what is deeper than such a seat may be; \"faces overlap\", \"solids "
              "overlap\", \"undecided: ...\"")
      .derived(
          "undecided", [](const Foul& foul) { return foul.undecided(); },
          "whether they share material is not known; the cause says why");
}

struct UnnamedScrew {
  FeatureRef hole, screw;
  std::string thread;
};
constexpr void describe(auto& fields, const UnnamedScrew*) {
  fields
      .value("UnnamedScrew",
             "A cylinder that overlaps the hole it stands in as a screw does, and yet is no "
             "thread: a foul.")
      .member("hole", &UnnamedScrew::hole, "where the hole is")
      .member("screw", &UnnamedScrew::screw, "where the cylinder is")
      .member("thread", &UnnamedScrew::thread,
              "whose sizes it has, less than a turn engaged; empty: none of the tables'");
}

struct Contact {
  OccurrenceId a{}, b{};
  std::optional<double> gap{};
  std::optional<Point> at{};
  std::string a_face{}, b_face{};
  std::string why{};
};
constexpr void describe(auto& fields, const Contact*) {
  fields
      .value("Contact",
             "Two occurrences that touch, or stand one in the other with no more between than a "
             "seat has, where no seat, thread or foul says how: a ball in its socket, a shaft in "
             "a vee, cones of two angles.")
      .member("a", &Contact::a, "number of the occurrence, from 0")
      .member("b", &Contact::b, "number of the occurrence, from 0, over a's")
      .member("gap_mm", &Contact::gap, "least distance; nothing where it could not be measured")
      .range(kFrom0)
      .member("a_face", &Contact::a_face,
              "of a there: \"plane\", \"cylinder\", \"cone\", \"sphere\", \"torus\" or \"free "
              "form\"; empty without a gap")
      .member("b_face", &Contact::b_face, "of b there, by the same words")
      .member("at", &Contact::at, "on a, where they come nearest, assembly's frame, or nothing")
      .member("why", &Contact::why, "one line, where the gap could not be measured");
}

struct FoulEffort {
  std::size_t pairs = 0;
  std::size_t distinct_pairs = 0;
  std::size_t exact_pairs = 0;
};
constexpr void describe(auto& fields, const FoulEffort*) {
  fields.value("FoulEffort", "How the foul search decided, for the notes and the benchmark.")
      .member("pairs", &FoulEffort::pairs, "near pairs looked at")
      .member("distinct_pairs", &FoulEffort::distinct_pairs,
              "by (product, product, relative placement)")
      .member("exact_pairs", &FoulEffort::exact_pairs,
              "that needed Open CASCADE's exact boolean, contacts aside");
}

struct FoulReport {
  std::vector<Foul> found;
  std::vector<Contact> contacts;
  std::vector<OccurrencePair> not_looked_at;
  std::vector<UnnamedScrew> unnamed_screws;
  std::vector<Note> notes;
  FoulEffort effort;
};
constexpr void describe(auto& fields, const FoulReport*) {
  fields.value("FoulReport", "Every foul found.")
      .member("found", &FoulReport::found, "by place in the model")
      .member("contacts", &FoulReport::contacts,
              "what touches at no seat, the nearest of each pair: what bears there is not judged")
      .member("not_looked_at", &FoulReport::not_looked_at,
              "pairs, the lesser number first, for which the time given to the look was up: they "
              "may foul")
      .member("unnamed_screws", &FoulReport::unnamed_screws, "as deep as screws, and none")
      .member("notes", &FoulReport::notes, "remarks")
      .member("effort", &FoulReport::effort, "what it took");
}

/// Finds every foul among seats.near_pairs, and what touches there at no seat.
///
/// One foul for each region of each pair. A seat that fouls (fouls_by > 0) and an axial seat with
/// a negative gap are fouls too. Press fits, threads and tapers within the seat limits, up to
/// where they end, are not; nor is what is no deeper than the file's own uncertainty.
/// @throws Error open_cascade_failed never: a pair Open CASCADE cannot decide is a note and a Foul
/// with
///         exact = false and cause "undecided: ...".
[[nodiscard]] SPOTBLUE_EXPORT FoulReport find_fouls(const Model& model, const Seats& seats,
                                                    const SeatSettings& settings,
                                                    const ReadLimits& limits);

}  // namespace spotblue
