#pragma once
// What a job says of parts and features that a partial model lacks.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "group/match/names.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

/// A name of the job that may mean what did not arrive.
struct LostName {
  std::string_view list;  ///< "fits"
  std::string_view key;   ///< "hole"
  std::optional<JobLine> line{};
  std::string name;
  std::string why;  ///< what did not arrive
};

struct JobOfWhatArrived {
  Job job;  ///< without the entries that have such a name
  std::vector<LostName> lost;
};

/// Takes out of the job what can't be held against a partial model, and parts of files that it
/// includes which the model has not. Names that nothing missing can
/// explain stay, so that they are refused as in a whole model.
[[nodiscard]] JobOfWhatArrived job_of_what_arrived(Job job, const Model& model, const Names& names);

}  // namespace spotblue
