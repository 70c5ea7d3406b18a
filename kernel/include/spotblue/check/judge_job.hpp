#pragma once
/// @file
/// Judging what was found on a model against what a job wants.

#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/check/finding.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

/// Judges what was found on the model; the same job and look give the same findings in the same
/// order: fits, gaps and fouls as the look found them, then what the parts do (press, run,
/// thrust, mesh, cuts, stock, end play, ways in), sizes to make to suit, and wants that matched
/// nothing.
///
/// Every seat, thread and foul of the look gets a finding, and every fit, want and measured value
/// of the job ends in one. What could not be compared is an undecided finding; where there is
/// nothing to judge at all that is one, so that there is always a finding. What a look had no time
/// or memory for is undecided; then nothing is judged that needs all pairs of parts, nor, where
/// parts were not measured, anything at all. Outcomes by ISO 14253-1; a range that is wide because
/// a part is still to be made, not because it was measured, does not conform until its limits do.
///
/// Judging has what the look has left of its time and memory, at least a quarter of both; where
/// that ends it, an undecided finding says so.
///
/// @throws Error bad_input naming job file and line when a name matches no part or feature of the
///         model (the nearest that exists is named) or more than one; not_in_standard for a class
///         the standard does not have at that size.
[[nodiscard]] SPOTBLUE_EXPORT std::vector<Finding> judge_job(const Job& job, const Look& look);

}  // namespace spotblue
