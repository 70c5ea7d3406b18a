#include "spotblue/check/check.hpp"

#include <filesystem>
#include <limits>
#include <system_error>

#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {

CheckResult check(const Job& job) { return check(job, std::numeric_limits<double>::infinity()); }

CheckResult check(const Job& job, double look_seconds) {
  const LookSettings settings{job.settings.seats, job.settings.limits, job.settings.completeness,
                              look_seconds};
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

}  // namespace spotblue
