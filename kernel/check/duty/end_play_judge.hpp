#pragma once
// The finding on one end play: what it is, and whether it is what the job wants.

#include <optional>

#include "group/axial/body_plays.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

struct EndPlayCase {
  const DeclaredJob& declared;
  const Groups& groups;
  const BodyPlay& play;
  OccurrenceId part{};     ///< occurrence that names the group
  OccurrenceId on_part{};  ///< that names what it plays on
};

/// Conforming only when every play there can be is within the limits; nonconforming when none is.
[[nodiscard]] Finding judge_end_play(const EndPlayCase& found, Limits wanted,
                                     const std::optional<JobLine>& line);

enum class Draw { no, yes };

/// Nothing wanted: the play as it is.
[[nodiscard]] Finding tell_end_play(const EndPlayCase& found, Draw draw);

}  // namespace spotblue
