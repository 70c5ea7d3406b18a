#include "spotblue/check/check.hpp"

#include <memory>

#include "help.hpp"
#include "output.hpp"
#include "progress.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/report/json.hpp"
#include "verbs.hpp"
#include "view_options.hpp"

namespace spotblue::command {
namespace {

CheckResult check_with_progress(const Job& job) {
  const Progress progress("checking " + job.model.filename().string());
  return check(job);
}

ExitCode exit_code(const CheckResult& result) {
  const OutcomeCount count = count_outcomes(result.findings);
  if (count.nonconforming > 0) {
    return kNonconforming;
  }
  return count.undecided > 0 ? kUndecided : kAllWell;
}

ExitCode run_check(const ViewOptions& options) {
  refuse_overwriting(options.output, options.file);
  const Job job = read_job(options.file);
  refuse_overwriting(options.output, job.model);
  const CheckResult result = check_with_progress(job);
  const LengthUnit unit = options.unit.empty() ? job.unit : parse_unit(options.unit);
  write_result(options.json ? check_json(result) : check_text(result, style_for(options, unit)),
               options.output);
  return exit_code(result);
}

}  // namespace

void add_check(CLI::App& app, Run& chosen) {
  const auto options = std::make_shared<ViewOptions>();
  CLI::App* verb = app.add_subcommand("check");
  set_help(*verb, kCheckHelp);
  verb->add_option("JOB.toml", options->file)->required();
  add_json(*verb, *options);
  add_unit(*verb, *options);
  add_output(*verb, *options);
  verb->callback([options, &chosen] { chosen = [options] { return run_check(*options); }; });
}

}  // namespace spotblue::command
