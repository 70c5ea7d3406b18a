#pragma once
/// @file
/// What two parts are to each other: pressed, keyed, screwed, clamped, pinned, or loose.

#include <optional>
#include <string>
#include <vector>

#include "spotblue/base/words.hpp"
#include "spotblue/geometry/seats.hpp"
#include "spotblue/job/job_line.hpp"

namespace spotblue {

/// The firmest first: of several that one pair has, the first in this order is its kind.
enum class JointKind { declared, screw, press, clamp, pin, taper, key, ring, loose };
constexpr auto describe(const JointKind*) {
  return words("What two parts are to each other.", "declared", "screwed", "pressed", "clamped",
               "pinned", "on a taper", "keyed", "ringed", "loose");
}

enum class Certainty { certain, perhaps };
constexpr auto describe(const Certainty*) {
  return words("Whether it is so whatever the sizes are within their limits.", "certain",
               "perhaps");
}

struct Joint {
  OccurrenceId a{}, b{};
  JointKind kind = JointKind::loose;
  Certainty certainty = Certainty::certain;
  bool turning = false;
  bool along = false;
  std::vector<FeatureRef> by{};
  std::optional<JobLine> line{};
  std::string why{};
};
constexpr void describe(auto& fields, const Joint*) {
  fields.value("Joint", "What two parts are to each other: one answer for each pair that meets.")
      .member("a", &Joint::a, "the one, that of the lower number")
      .member("b", &Joint::b, "the other")
      .member("kind", &Joint::kind,
              "the firmest of all that holds them; loose: they run on each other or only lie in "
              "each other")
      .member("certainty", &Joint::certainty,
              "perhaps: its sizes may come out either way, and it holds nothing")
      .member("turning", &Joint::turning, "whether the one cannot turn without the other")
      .member("along", &Joint::along,
              "whether the one cannot move along the axis without the other")
      .member("by", &Joint::by,
              "the features that make it: of the seat; of a clamp or a cross screw those of its "
              "thread; of parts pinned to each other the pin in its holes; none where it is "
              "declared")
      .member("line", &Joint::line, "of the job file, where it is declared; else None")
      .member("why", &Joint::why,
              "all that holds the two, the firmest first: \"pressed, H7/s6; keyed\"");
}

}  // namespace spotblue
