#pragma once

#include <optional>
// The finding on one end play: what it is, and whether it is what the job wants.

#include "group/axial/end_play_stack.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

struct EndPlayCase {
  const DeclaredJob& declared;
  const Groups& groups;
  const EndPlay& play;
  OccurrenceId part{};         ///< occurrence that names the group
  OccurrenceId ground_part{};  ///< that names what stands still
};

/// Conforming only when every play there can be is within the limits; nonconforming when none is.
[[nodiscard]] Finding judge_end_play(const EndPlayCase& found, Limits wanted,
                                     std::optional<int> line);

enum class Draw { no, yes };

/// Nothing wanted: the play as it is.
[[nodiscard]] Finding tell_end_play(const EndPlayCase& found, Draw draw);

}  // namespace spotblue
