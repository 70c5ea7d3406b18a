#pragma once
// Which parts turn, and how.

#include <optional>
#include <vector>

#include "group/joints/groups.hpp"
#include "group/match/declared.hpp"

namespace spotblue {

/// How a part turns, by what the job says of it or of one it turns with.
struct Turn {
  double rpm = 0.0;
  Duty duty = Duty::intermittent;
  std::optional<double> load_n;
  std::optional<double> thrust_n;
  std::optional<JobLine> line{};
  const Turning* loaded = nullptr;    ///< the entry that gives the load; none where none does
  std::vector<OccurrenceId> named{};  ///< of this body, by that entry
};

struct Turns {
  std::vector<std::optional<Turn>> of;  ///< by occurrence; nothing: it stands still
};

/// Spreads [[turning]] over the groups that turn together.
/// @throws Error bad_input naming both lines where two entries for one group disagree.
[[nodiscard]] Turns find_turns(const DeclaredJob& declared, const Groups& groups);

}  // namespace spotblue
