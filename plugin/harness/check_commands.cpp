// Commands that judge what was found: by a job file, or by the sizes in the document.

#include <fmt/format.h>

#include <nlohmann/json.hpp>
#include <optional>

#include "plugin/harness/commands.hpp"
#include "plugin/harness/json_value.hpp"
#include "plugin/harness/session.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/report/check_text.hpp"
#include "spotblue/report/json.hpp"
#include "spotblue/report/values.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

namespace {

Json outcomes_of(const std::vector<Finding>& findings) {
  const OutcomeCount count = count_outcomes(findings);
  return {{"conforming", count.conforming},
          {"nonconforming", count.nonconforming},
          {"undecided", count.undecided},
          {"findings", findings.size()}};
}

}  // namespace

Json check_command(Session& session, const Arguments& arguments) {
  arguments.expect(1, 2);
  const std::string& name = arguments.words()[0];
  std::optional<Job> job;
  if (arguments.words().size() == 2) {
    // Its model is not opened: what the harness holds is looked at in its place.
    job = read_job(path_of_shown(arguments.words()[1]), Outside::allowed);
  }
  const Subject& found = session.check_anew(name, job, bounds_in(arguments));
  if (arguments.has("-json")) {
    return check_json(found.result);
  }
  if (arguments.has("-text")) {
    const std::string unit = arguments.value("-unit");
    return check_text(found.result,
                      {unit.empty() ? found.result.job.unit : parse_unit(unit), Colour::never});
  }
  return outcomes_of(found.result.findings);
}

Json findings_command(Session& session, const Arguments& arguments) {
  arguments.expect(1, 2);
  const Subject& found = session.subject(arguments.words()[0]);
  if (!found.checked) {
    throw mistake(fmt::format("'{}'", found.name), "was not checked yet, or has changed since",
                  fmt::format("run sbcheck {} JOB.toml", found.name));
  }
  const Json all = json_of(finding_values(found.result.findings));
  if (arguments.words().size() == 1) {
    return all;
  }
  const std::string& outcome = arguments.words()[1];
  if (outcome != "conforming" && outcome != "nonconforming" && outcome != "undecided") {
    throw mistake(fmt::format("'{}'", outcome), "is no outcome",
                  "write conforming, nonconforming or undecided");
  }
  Json some = Json::array();
  for (const Json& finding : all) {
    if (finding["outcome"] == outcome) {
      some.push_back(finding);
    }
  }
  return some;
}

}  // namespace spotblue::plugin
