#pragma once
// Where in the job file something is said.

#include <optional>

#include "group/words/said_sizes.hpp"
#include "spotblue/job/job_line.hpp"

namespace spotblue {

/// " (job file, line 12)", or by the name of the file that it includes; nothing for jobs made in
/// code.
[[nodiscard]] inline Saying at_line(const std::optional<JobLine>& line) {
  if (!line) {
    return {};
  }
  return line->file.empty() ? say(said::kFromLine, line->number)
                            : say(said::kFromLineOf, line->file, line->number);
}

}  // namespace spotblue
