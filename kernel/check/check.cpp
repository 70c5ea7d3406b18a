#include "spotblue/check/check.hpp"

namespace spotblue {

CheckResult check(const Job& job) {
  const LookSettings settings{job.settings.seats, job.settings.limits, job.settings.completeness};
  CheckResult result;
  result.look = look(job.model, settings);
  result.job = job;
  result.findings = judge_job(result.job, result.look);
  return result;
}

}  // namespace spotblue
