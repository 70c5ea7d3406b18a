#pragma once
/// @file
/// Looking at a model and judging it: the one entry, whatever the model is of and is judged by.

#include <filesystem>
#include <functional>
#include <optional>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/check/finding.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/group/group.hpp"
#include "spotblue/job/job.hpp"
#include "spotblue/job/outside.hpp"

namespace spotblue {

struct CheckResult {
  Look look;
  Job job;
  std::vector<Finding> findings;
  /// What the findings rest on; none where the model did not arrive, or was not judged, whole.
  std::optional<Group> group{};
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

/// Judges what was found on a model by a job.
/// @throws Error as judge_job.
[[nodiscard]] SPOTBLUE_EXPORT CheckResult judged(Job job, Look look);

/// Whether all of the model arrived, was looked at and judged.
[[nodiscard]] SPOTBLUE_EXPORT bool is_whole(const CheckResult& result);

}  // namespace spotblue
