#pragma once
// What each name of a job must mean.

#include "group/match/names.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

/// Looks every name of the job up.
/// @throws Error bad_input with all mistakes, each with its line and cure: a name that the model
/// does not have, that could mean several features, or that means a feature of another kind than
/// the entry is about; two parts that are one; a cut that leaves more than there was.
void require_names(const Job& job, const Model& model, const Names& names);

}  // namespace spotblue
