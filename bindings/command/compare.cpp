#include "spotblue/check/compare.hpp"

#include <filesystem>
#include <memory>
#include <vector>

#include "help.hpp"
#include "output.hpp"
#include "progress.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/job/job_file.hpp"
#include "verbs.hpp"
#include "view_options.hpp"

namespace spotblue::command {
namespace {

struct CompareOptions {
  ViewOptions view;
  std::vector<std::filesystem::path> jobs;
};

std::vector<CheckResult> check_all(const CompareOptions& options) {
  std::vector<Job> jobs;
  for (const std::filesystem::path& file : options.jobs) {
    refuse_overwriting(options.view.output, file);
    jobs.push_back(read_job(file));
    refuse_overwriting(options.view.output, jobs.back().model);
  }
  std::vector<CheckResult> plans;
  for (const Job& job : jobs) {
    const Progress progress("checking " + shown_name(job.model.filename()));
    plans.push_back(check(job));
  }
  return plans;
}

ExitCode run_compare(const CompareOptions& options) {
  const std::vector<CheckResult> plans = check_all(options);
  const Comparison comparison = compare_plans(plans);
  const LengthUnit unit =
      options.view.unit.empty() ? plans.front().job.unit : parse_unit(options.view.unit);
  write_result(compare_text(comparison, plans, style_for(options.view, unit)), options.view.output);
  return comparison.best ? kAllWell : kNonconforming;
}

}  // namespace

void add_compare(CLI::App& app, Run& chosen) {
  const auto options = std::make_shared<CompareOptions>();
  CLI::App* verb = app.add_subcommand("compare");
  set_help(*verb, kCompareHelp);
  verb->add_option("JOB.toml", options->jobs)->required()->expected(2, 1000);
  add_unit(*verb, options->view);
  add_output(*verb, options->view);
  verb->callback([options, &chosen] { chosen = [options] { return run_compare(*options); }; });
}

}  // namespace spotblue::command
