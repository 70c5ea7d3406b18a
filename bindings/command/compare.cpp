#include "spotblue/check/compare.hpp"

#include <filesystem>
#include <vector>

#include "output.hpp"
#include "progress.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/whole_file.hpp"
#include "spotblue/job/job_file.hpp"
#include "verbs.hpp"
#include "view_options.hpp"

namespace spotblue::command {
namespace {

std::vector<CheckResult> check_all(const Given& given, const std::filesystem::path& output) {
  std::vector<Job> jobs;
  for (const std::filesystem::path file : given.operands) {
    refuse_overwriting(output, {file});
    jobs.push_back(read_job(file, outside_of(given)));
    refuse_overwriting(output, {jobs.back().model});
  }
  std::vector<CheckResult> plans;
  for (const Job& job : jobs) {
    const Progress progress("checking " + shown_name(job.model.filename()));
    plans.push_back(check(job));
    refuse_overwriting(output, files_of(plans.back().look.model));
  }
  return plans;
}

}  // namespace

ExitCode run_compare(const Given& given) {
  const ViewOptions options = view_options(given);
  const std::vector<CheckResult> plans = check_all(given, options.output);
  const Comparison comparison = compare_plans(plans);
  const LengthUnit unit = options.unit.empty() ? plans.front().job.unit : parse_unit(options.unit);
  write_result(compare_text(comparison, plans, style_for(options, unit)), options.output);
  return comparison.best ? kAllWell : kNonconforming;
}

}  // namespace spotblue::command
