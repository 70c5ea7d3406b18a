#include "check/duty/setting_findings.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include "check/words/words.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said_setting.hpp"

namespace spotblue {
namespace {

// "Hub on Shaft, 0.1 to 0.3 mm (job file, line 12)".
Saying want_said(const WorkedGroup& worked, const SettingWant& want) {
  const auto name = [&worked](std::size_t group) {
    return worked.declared.names.reference(main_part(worked.declared, worked.joints, group));
  };
  return say(said::kPlayWanted, name(want.of), name(want.on), want.wanted, at_line(want.line));
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

void tell_thread(const PartSetting& setting, Limits window, Finding& finding) {
  const auto left = thread_within(setting, window);
  if (!left) {
    return;
  }
  add_range(finding.found, "thread_left", *left);
  if (left->lower <= Length()) {
    finding.outcome = Outcome::nonconforming;
    finding.advice = say(said::kThreadOff) + finding.advice;
  } else if (left->lower < least_thread(setting)) {
    finding.outcome = Outcome::undecided;
    finding.advice += say(said::kThreadShort, left->lower, least_thread(setting));
  }
}

// "Nut meets Stud at 25 mm", for each end of the range that metal makes.
Saying metal_said(const WorkedGroup& worked, const PartSetting& setting) {
  const auto name = [&worked](OccurrenceId part) { return worked.declared.names.reference(part); };
  Saying all;
  for (const MetalEnd& end : ends_of_range(setting)) {
    all += say(end.certain ? said::kSettingMeets : said::kSettingMayMeet, name(end.part),
               name(end.by), 0.5 * (end.at.lower + end.at.upper));
  }
  return all;
}

void tell_window(const PartSetting& setting, Finding& finding) {
  const Limits window = *widest_window(setting.setting);
  add_range(finding.found, "window", window);
  for (const Limits& other : setting.setting.windows) {
    if (!(other == window)) {
      finding.found.push_back({"or_within", say(said::kOrWithin, other)});
    }
  }
  if (!leaves_room(window)) {
    finding.advice =
        say(said::kNoWidthToSet, Reference(setting.length), 0.5 * (window.lower + window.upper));
    return;
  }
  finding.outcome = Outcome::conforming;
  finding.advice = say(said::kSetIt, Reference(setting.length), window);
  if (setting.pitch) {
    const Figure turns{window.width() / *setting.pitch, 2};
    finding.found.push_back({"turns_of_thread", plain_number(turns.value)});
    finding.advice += say(said::kSetTurns, turns);
  }
  tell_thread(setting, window, finding);
  if (into_run_out(setting, window) && finding.outcome == Outcome::conforming) {
    finding.outcome = Outcome::undecided;
    finding.advice += said::kRunOut;
  }
}

void tell_none(const WorkedGroup& worked, const PartSetting& setting, Finding& finding) {
  Saying wants;
  for (const std::size_t number : setting.setting.contradict) {
    wants += want_said(worked, setting.wants[number]);
  }
  finding.found.push_back({"window", "none"});
  finding.found.push_back({"no_setting_holds", wants});
  finding.advice = say(
      setting.setting.contradict.size() == 1 ? said::kNoSettingHolds : said::kSettingsContradict,
      wants);
  if (const Saying metal = metal_said(worked, setting); !metal.empty()) {
    finding.advice += say(said::kGoesNoFurther, metal);
  }
}

Finding finding_of(const WorkedGroup& worked, const PartSetting& setting) {
  const DeclaredJob& declared = worked.declared;
  Finding finding;
  finding.kind = "setting";
  finding.about = {declared.names.reference(setting.part.part)};
  finding.outcome = Outcome::undecided;
  finding.basis = say(said::kSetBy, at_line(setting.part.adjust->line)) + said::kSettingFormula;
  if (setting.thread) {
    finding.basis += said::kHalfAThread;
  }
  finding.found = {{"sets", setting.length}, {"as_modelled", measure(setting.modelled)}};
  int number = 0;
  for (const SettingWant& want : setting.wants) {
    finding.wanted.push_back({"end_play_" + std::to_string(++number), want_said(worked, want)});
  }
  if (!setting.range) {
    finding.advice = said::kSettingWithoutThread;
    return finding;
  }
  const Saying metal = metal_said(worked, setting);
  if (!metal.empty()) {
    finding.found.push_back({"metal", metal});
  }
  if (setting.range->upper < setting.range->lower) {
    finding.found.push_back({"window", "none"});
    finding.advice = say(said::kNoRoomToSet, metal);
    return finding;
  }
  add_range(finding.found, "range", *setting.range);
  if (setting.wants.empty()) {
    finding.advice = said::kSettingForNothing;
  } else if (!setting.setting.settled) {
    finding.advice = said::kSettingTooManyWays;
  } else if (setting.setting.windows.empty()) {
    tell_none(worked, setting, finding);
  } else {
    tell_window(setting, finding);
  }
  return finding;
}

// A part that is set and that no loop of stops goes by.
Finding without_loop_of(const WorkedGroup& worked, const Adjust& adjust, OccurrenceId part) {
  Finding finding;
  finding.kind = "setting";
  finding.about = {worked.declared.names.reference(part)};
  finding.outcome = Outcome::undecided;
  finding.basis = say(said::kSetBy, at_line(adjust.line));
  finding.found = {{"window", "not known"}};
  finding.advice = said::kSettingStopsNothing;
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
