#pragma once
// Where the load of a part that turns acts.

#include <optional>
#include <string>
#include <vector>

#include "group/turning/turns.hpp"

namespace spotblue {

struct LoadPlace {
  std::optional<Point> at;  ///< assembly's frame; nothing where it is not known
  Saying words;             ///< "at Crank: bore", "at the middle of Wheel, no place is given"
  std::vector<OccurrenceId> part{};  ///< whose feature the job names for it
};

/// In the middle of the feature that [[turning]] names, or past it; else in the middle of the part
/// by its box.
/// @throws Error bad_input, naming job file and line, for a feature that is none of the model's, or
///         stands at several places none of which turns with the part, and for a way past what is
///         no face.
[[nodiscard]] LoadPlace load_place(const DeclaredJob& declared, const Groups& groups,
                                   const Turn& turn);

}  // namespace spotblue
