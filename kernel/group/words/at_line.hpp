#pragma once
// Where in the job file something is said.

#include <optional>

#include "group/words/said_sizes.hpp"

namespace spotblue {

/// " (job file, line 12)"; nothing for jobs made in code.
[[nodiscard]] inline Saying at_line(std::optional<int> line) {
  return line ? say(said::kFromLine, *line) : Saying();
}

}  // namespace spotblue
