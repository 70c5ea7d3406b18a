#include "spotblue/check/check.hpp"

#include <algorithm>
#include <filesystem>
#include <system_error>

#include "check/findings/unseen_findings.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/job/bare_job.hpp"

namespace spotblue {

CheckResult check(const Job& job) { return check(job, LookBounds{}); }

CheckResult check(const Job& job, const LookBounds& bounds) {
  const LookSettings settings = bounded(look_settings(job), bounds);
  std::error_code unknown;
  if (!job.file.empty() && !std::filesystem::exists(job.model, unknown)) {
    throw Error(ErrorCode::file_access, {job.file, "model"},
                "there is no file " + shown_name(job.model),
                "correct the name; it counts from the job file's folder");
  }
  CheckResult result;
  result.look = look(job.model, settings);
  result.job = job;
  result.findings = judge_job(result.job, result.look);
  return result;
}

CheckResult check_model(const std::filesystem::path& model, std::optional<LengthUnit> unit,
                        const LookSettings& settings) {
  CheckResult result;
  result.look = look(model, settings);
  result.job = bare_job(model, unit.value_or(unit_of(result.look.model.file)));
  result.findings = judge_job(result.job, result.look);
  return result;
}

bool is_whole(const CheckResult& result) {
  return is_whole(result.look) && std::ranges::none_of(result.findings, [](const Finding& one) {
           return one.kind == kNotJudged;
         });
}

}  // namespace spotblue
