#pragma once
// All that is said of a job, with the group that it is said of.

#include <optional>
#include <vector>

#include "spotblue/check/finding.hpp"
#include "spotblue/group/group.hpp"

namespace spotblue {

struct Judgement {
  std::vector<Finding> findings;
  std::optional<Group> group;  ///< none where the model or the judging is not whole
};

/// @throws Error as judge_job.
[[nodiscard]] Judgement judgement_of(const Job& job, const Look& look);

}  // namespace spotblue
