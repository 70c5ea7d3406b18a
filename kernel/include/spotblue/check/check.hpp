#pragma once
/// @file
/// Judging a job: what was found on the model against what the job wants.

#include <filesystem>
#include <functional>
#include <optional>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/check/finding.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/job/job.hpp"
#include "spotblue/job/outside.hpp"

namespace spotblue {

struct CheckResult {
  Look look;
  Job job;
  std::vector<Finding> findings;
};

/// What is judged, and by what.
struct Judging {
  /// What is wanted, and the model's file; without entries, that the model be as it states itself.
  Job job;
  /// Advice in the unit that the model's file is written in, in place of the job's.
  bool in_unit_of_file = false;
  /// Who makes the model, of a document or of shapes in memory, which are then judged in place of
  /// the job's file; see look_at.
  std::function<Model()> model = {};
};

/// What a file that was given asks for: a job file's job, or a model's being as it states itself.
/// @param unit  of the advice on a model; nothing: as its file is written.
/// @throws Error as read_job, of a job file.
[[nodiscard]] SPOTBLUE_EXPORT Judging judging_of(const std::filesystem::path& file, Outside outside,
                                                 std::optional<LengthUnit> unit = {});

/// Looks at the model and judges it, within the bounds that are given, which stand in the result's
/// job then, and the job's own; what is not looked at or not judged within them is undecided.
/// @throws Error as bounded, look and look_at (the model) and judge_job (the job against the
///         model).
[[nodiscard]] SPOTBLUE_EXPORT CheckResult check(Judging asked, const LookBounds& bounds = {});

/// Whether all of the model arrived, was looked at and judged.
[[nodiscard]] SPOTBLUE_EXPORT bool is_whole(const CheckResult& result);

/// Judges what was found on the model; the same job and look give the same findings in the same
/// order: fits, gaps and clashes as the look found them, then what the parts do (press, run,
/// thrust, mesh, cuts, stock, end play, ways in), sizes to make to suit, and wants that matched
/// nothing.
///
/// Every seat, thread and clash of the look gets a finding, and every fit, want and measured value
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
