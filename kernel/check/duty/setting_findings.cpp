#include "check/duty/setting_findings.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>

#include "check/words/words.hpp"
#include "group/words/size_text.hpp"

namespace spotblue {
namespace {

constexpr std::string_view kSettingFormula =
    "every end play wanted within its limits, all other lengths at their worst";

// "Hub on Shaft, 0.1 to 0.3 mm (job file, line 12)".
std::string want_text(const WorkedGroup& worked, const SettingWant& want) {
  const auto name = [&worked](std::size_t group) {
    return worked.declared.names.id_of(main_part(worked.declared, worked.joints, group));
  };
  return fmt::format("{} on {}, {}{}", name(want.of), name(want.on),
                     range_text(want.wanted, worked.declared.job->unit), from_line(want.line));
}

// The thread left where it is set least and most.
std::optional<Limits> thread_within(const PartSetting& setting, Limits window) {
  const auto low = thread_left(setting, window.lower);
  const auto high = thread_left(setting, window.upper);
  if (!low || !high) {
    return std::nullopt;
  }
  return Limits{Length::mm(std::min(*low, *high)), Length::mm(std::max(*low, *high))};
}

// What is said of the setting, and of the thread that it leaves.
std::string thread_text(const PartSetting& setting, Limits window, const std::string& advice,
                        LengthUnit unit, Finding& finding) {
  const auto left = thread_within(setting, window);
  if (!left) {
    return advice;
  }
  add_range(finding.found, "thread_left", *left);
  if (left->lower <= Length()) {
    finding.outcome = Outcome::nonconforming;
    return "its thread is off before it is set so: " + advice;
  }
  if (left->lower < least_thread(setting)) {
    finding.outcome = Outcome::undecided;
    return advice + fmt::format("; {} of thread left is less than half its diameter",
                                length_text(left->lower, unit));
  }
  return advice;
}

void tell_window(const WorkedGroup& worked, const PartSetting& setting, Finding& finding) {
  const LengthUnit unit = worked.declared.job->unit;
  const Limits window = *widest_window(setting.setting);
  add_range(finding.found, "window", window);
  for (const Limits& other : setting.setting.windows) {
    if (!(other == window)) {
      finding.found.push_back({"or_within", range_text(other, unit)});
    }
  }
  finding.outcome = Outcome::conforming;
  std::string advice = fmt::format("set {} {}", setting.length, range_text(window, unit));
  if (setting.pitch) {
    const std::string turns = fmt::format("{:.2f}", window.width() / *setting.pitch);
    finding.found.push_back({"turns_of_thread", turns});
    advice += fmt::format(": {} turns of its thread from end to end", turns);
  }
  finding.advice = thread_text(setting, window, advice, unit, finding);
}

void tell_none(const WorkedGroup& worked, const PartSetting& setting, Finding& finding) {
  std::string wants;
  for (const std::size_t number : setting.setting.contradict) {
    wants += (wants.empty() ? "" : " and ") + want_text(worked, setting.wants[number]);
  }
  const bool one = setting.setting.contradict.size() == 1;
  finding.found.push_back({"window", "none"});
  finding.found.push_back({"no_setting_holds", wants});
  finding.advice = fmt::format(
      "no setting holds {}{} whatever the other lengths are: {}", one ? "" : "together ", wants,
      one ? "measure them closer, or set it by the play that you measure" : "change one of them");
}

Finding finding_of(const WorkedGroup& worked, const PartSetting& setting) {
  const DeclaredJob& declared = worked.declared;
  Finding finding;
  finding.kind = "setting";
  finding.about = {declared.names.reference(setting.part.part)};
  finding.outcome = Outcome::undecided;
  finding.basis = fmt::format(
      "set{}; {}{}", from_line(setting.part.adjust->line), kSettingFormula,
      setting.thread ? "; half the diameter of thread left: common practice, no source" : "");
  finding.found = {{"sets", setting.length}, {"as_modelled", measure(setting.modelled)}};
  int number = 0;
  for (const SettingWant& want : setting.wants) {
    finding.wanted.push_back({fmt::format("end_play_{}", ++number), want_text(worked, want)});
  }
  if (!setting.range) {
    finding.advice =
        "the model shows no thread of it, so how far it goes is not known: give its range";
    return finding;
  }
  add_range(finding.found, "range", *setting.range);
  if (setting.wants.empty()) {
    finding.advice = "no end play that is wanted goes by it: say in [[wants]] what it is set for";
  } else if (!setting.setting.settled) {
    finding.advice = "too many stops could end the plays: join in [[joins]] what is held";
  } else if (setting.setting.windows.empty()) {
    tell_none(worked, setting, finding);
  } else {
    tell_window(worked, setting, finding);
  }
  return finding;
}

// A part that is set and that no loop of stops goes by.
Finding without_loop_of(const WorkedGroup& worked, const Adjust& adjust, OccurrenceId part) {
  Finding finding;
  finding.kind = "setting";
  finding.about = {worked.declared.names.reference(part)};
  finding.outcome = Outcome::undecided;
  finding.basis = "set" + from_line(adjust.line);
  finding.found = {{"window", "not known"}};
  finding.advice =
      "no plane face of it stops a part that is captured: see what it is to stop, or judge it by "
      "hand";
  return finding;
}

}  // namespace

std::vector<Finding> setting_findings(const WorkedGroup& worked) {
  std::vector<Finding> findings;
  for (const Adjust& adjust : worked.declared.job->adjust) {
    for (const OccurrenceId part :
         worked.declared.names.part(adjust.part, {"adjust", "part", adjust.line}).occurrences) {
      bool told = false;
      for (const PartSetting& setting : worked.plays.settings) {
        if (setting.part.part == part) {
          findings.push_back(finding_of(worked, setting));
          told = true;
        }
      }
      if (!told) {
        findings.push_back(without_loop_of(worked, adjust, part));
      }
    }
  }
  return findings;
}

}  // namespace spotblue
