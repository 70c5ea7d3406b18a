#pragma once
// read_model with the time it took.

#include <filesystem>
#include <vector>

#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

struct TimedModel {
  Model model;
  std::vector<Note> not_looked_at;  // parts that a TimeLimit left no time for
  double read_seconds = 0.0;        // scan, child process, parse and transfer, hand-over
  double features_seconds = 0.0;    // feature extraction in the child
};

// As read_model. Throws LimitReached when a limit on time or memory ends before the reading.
[[nodiscard]] TimedModel read_model_timed(const std::filesystem::path& file,
                                          const ReadLimits& limits, Completeness completeness);

}  // namespace spotblue
