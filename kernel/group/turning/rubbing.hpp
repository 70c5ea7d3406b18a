#pragma once
// Which of two parts turns against the other, and how.

#include <optional>

#include "group/joints/groups.hpp"
#include "group/turning/turns.hpp"

namespace spotblue {

/// How two parts turn against each other.
struct Rubbing {
  double rpm = 0.0;  ///< > 0; of both together where both turn, taken as against each other
  Duty duty = Duty::intermittent;
  std::optional<double> load_n, thrust_n;
  OccurrenceId turning{};  ///< the occurrence that turns, the faster where both do
  bool both = false;
};

/// Nothing where the two turn together or both stand still.
[[nodiscard]] std::optional<Rubbing> rubbing(const Groups& groups, const Turns& turns,
                                             OccurrenceId a, OccurrenceId b);

}  // namespace spotblue
