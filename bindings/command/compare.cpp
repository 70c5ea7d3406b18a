#include "spotblue/check/compare.hpp"

#include <algorithm>
#include <filesystem>
#include <utility>
#include <vector>

#include "command/output.hpp"
#include "command/progress.hpp"
#include "command/verbs.hpp"
#include "command/view_options.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/whole_file.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/report/compare_text.hpp"

namespace spotblue::command {
namespace {

std::vector<CheckResult> check_all(const Given& given, const ViewOptions& options) {
  const std::filesystem::path& output = options.output;
  std::vector<Job> jobs;
  for (const std::filesystem::path file : given.operands) {
    refuse_overwriting(output, {file});
    jobs.push_back(read_job(file, options.outside));
    refuse_overwriting(output, {jobs.back().model});
    refuse_overwriting(output, jobs.back().read_from);
  }
  std::vector<CheckResult> plans;
  for (Job& job : jobs) {
    const Progress progress("checking " + shown_name(job.model.filename()));
    plans.push_back(check({.job = std::move(job)}, options.bounds));
    refuse_overwriting(output, files_of(plans.back().look.model));
  }
  return plans;
}

// What was not looked at may be wrong, but a plan that is wrong anyway is no better for it.
ExitCode code_of(const Comparison& comparison) {
  const std::vector<PlanCost>& plans = comparison.plans;
  if (std::ranges::all_of(plans, [](const PlanCost& p) { return p.outcomes.nonconforming > 0; })) {
    return kNonconforming;
  }
  return std::ranges::all_of(plans, &PlanCost::whole) ? kAllWell : kUndecided;
}

}  // namespace

ExitCode run_compare(const Given& given) {
  const ViewOptions options = view_options(given);
  const std::vector<CheckResult> plans = check_all(given, options);
  const Comparison comparison = compare_plans(plans);
  const LengthUnit unit = options.unit.empty() ? plans.front().job.unit : parse_unit(options.unit);
  return write_result(compare_text(comparison, plans, style_for(options, unit)), options.output,
                      code_of(comparison));
}

}  // namespace spotblue::command
