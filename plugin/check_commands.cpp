// Commands that judge what was found: by a job file, or by the classes in the document.

#include <fmt/format.h>

#include <map>
#include <nlohmann/json.hpp>
#include <set>

#include "commands.hpp"
#include "document_sizes.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/report/json.hpp"
#include "spotblue/report/text.hpp"

namespace spotblue::plugin {

using Json = nlohmann::ordered_json;

namespace {

// Fits of the seats whose hole and shaft have both a class, on one nominal size; the class alone
// of every other feature.
Job job_of_classes(const Subject& found) {
  std::map<std::string, DocumentSize> sizes;
  for (const DocumentSize& size : sizes_in(found)) {
    if (!size.feature.empty() && !size.tolerance_class.empty()) {
      sizes.insert_or_assign(size.feature, size);
    }
  }
  if (sizes.empty()) {
    throw mistake(fmt::format("'{}'", found.name), "has no tolerance class to be checked by",
                  "set some with sbclass, or name a job file");
  }
  Job job;
  std::set<std::pair<std::string, std::string>> fits;
  const auto add_fit = [&](const FeatureRef& hole_ref, const FeatureRef& shaft_ref) {
    const auto hole = sizes.find(feature_id(found.look.model, hole_ref));
    const auto shaft = sizes.find(feature_id(found.look.model, shaft_ref));
    if (hole != sizes.end() && shaft != sizes.end() &&
        hole->second.nominal == shaft->second.nominal &&
        fits.emplace(hole->first, shaft->first).second) {
      const std::string text = hole->second.tolerance_class + "/" + shaft->second.tolerance_class;
      job.fits.push_back(
          {hole->first, shaft->first, ClassFit{FitSystem::iso_286, text, hole->second.nominal}, 0});
    }
  };
  for (const RadialSeat& seat : found.look.seats.radial) {
    add_fit(seat.hole, seat.shaft);
  }
  for (const WidthSeat& seat : found.look.seats.width) {
    add_fit(seat.slot, seat.key);
  }
  for (const auto& [feature, size] : sizes) {
    job.sizes.push_back({feature, size.tolerance_class, size.nominal, 0});
  }
  return job;
}

Json outcomes_of(const std::vector<Finding>& findings) {
  const OutcomeCount count = count_outcomes(findings);
  return {{"conforming", count.conforming},
          {"nonconforming", count.nonconforming},
          {"undecided", count.undecided},
          {"findings", findings.size()}};
}

Json json_of_check(const Subject& found) {
  return Json::parse(check_json({found.look, found.job, found.findings}));
}

}  // namespace

Json check_command(const Arguments& arguments) {
  arguments.expect(1, 2);
  const std::string& name = arguments.words()[0];
  Job job;
  if (arguments.words().size() == 2) {
    job = read_job(arguments.words()[1]);
    look_anew(name, {job.settings.seats, job.settings.limits, job.settings.completeness});
  } else {
    document_subject(name);
    job = job_of_classes(look_anew(name, {}));
  }
  Subject& found = subject(name);
  found.findings = judge_job(job, found.look);
  found.job = std::move(job);
  found.checked = true;
  if (arguments.has("-json")) {
    return check_json({found.look, found.job, found.findings});
  }
  if (arguments.has("-text")) {
    const std::string unit = arguments.value("-unit");
    return check_text({found.look, found.job, found.findings},
                      {unit.empty() ? found.job.unit : parse_unit(unit), Colour::never});
  }
  return outcomes_of(found.findings);
}

Json findings_command(const Arguments& arguments) {
  arguments.expect(1, 2);
  const Subject& found = subject(arguments.words()[0]);
  if (!found.checked) {
    throw mistake(fmt::format("'{}'", found.name), "was not checked yet, or has changed since",
                  fmt::format("run sbcheck {} JOB.toml", found.name));
  }
  const Json all = json_of_check(found)["findings"];
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
