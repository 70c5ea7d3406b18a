#pragma once
// read_model under limits on time and memory, which may leave parts unmeasured.

#include <filesystem>
#include <vector>

#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

struct ModelWithin {
  Model model;
  std::vector<Note> not_looked_at;  // parts that a TimeLimit left no time for
};

// As read_model; measuring the parts is a stage (StageTime). Throws LimitReached when a limit on
// time or memory ends before the reading.
[[nodiscard]] ModelWithin read_within(const std::filesystem::path& file, const ReadLimits& limits,
                                      Completeness completeness);

}  // namespace spotblue
