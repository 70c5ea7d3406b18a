#include "spotblue/check/check.hpp"

#include <algorithm>
#include <filesystem>
#include <system_error>
#include <utility>

#include "check/findings/unseen_findings.hpp"
#include "check/judging/judgement.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/geometry/read.hpp"
#include "spotblue/job/bare_job.hpp"
#include "spotblue/job/job_file.hpp"

namespace spotblue {

namespace {

void require_model(const Job& job) {
  std::error_code unknown;
  if (!job.file.empty() && !std::filesystem::exists(job.model, unknown)) {
    throw Error(ErrorCode::file_access, {job.file, "model"},
                "there is no file " + shown_name(job.model),
                "correct the name; it counts from the job file's folder");
  }
}

}  // namespace

Judging judging_of(const std::filesystem::path& file, Outside outside,
                   std::optional<LengthUnit> unit) {
  if (is_model_file(file)) {
    return {.job = bare_job(file, unit.value_or(LengthUnit::mm)), .in_unit_of_file = !unit};
  }
  return {.job = read_job(file, outside)};
}

CheckResult check(Judging asked, const LookBounds& bounds) {
  LookSettings& settings = asked.job.settings.look;
  settings = bounded(settings, bounds);
  if (!asked.model) {
    require_model(asked.job);
  }
  CheckResult result;
  result.look = asked.model ? look_at(asked.model, settings) : look(asked.job.model, settings);
  result.job = std::move(asked.job);
  if (asked.in_unit_of_file) {
    result.job.unit = unit_of(result.look.model.file);
  }
  return judged(std::move(result.job), std::move(result.look));
}

CheckResult judged(Job job, Look look) {
  CheckResult result{std::move(look), std::move(job), {}, {}};
  Judgement judgement = judgement_of(result.job, result.look);
  result.findings = std::move(judgement.findings);
  result.group = std::move(judgement.group);
  return result;
}

bool is_whole(const CheckResult& result) {
  return is_whole(result.look) && std::ranges::none_of(result.findings, [](const Finding& one) {
           return one.kind == kNotJudged;
         });
}

}  // namespace spotblue
