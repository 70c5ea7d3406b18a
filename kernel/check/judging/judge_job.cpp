#include "spotblue/check/judge_job.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <iterator>
#include <map>
#include <string>
#include <utility>

#include "base/work_limit.hpp"
#include "check/duty/bearing_findings.hpp"
#include "check/duty/cut_findings.hpp"
#include "check/duty/end_play_findings.hpp"
#include "check/duty/keep_off_findings.hpp"
#include "check/duty/mesh_findings.hpp"
#include "check/duty/press_findings.hpp"
#include "check/duty/running_clearance_findings.hpp"
#include "check/duty/setting_findings.hpp"
#include "check/duty/stock_findings.hpp"
#include "check/duty/thrust_findings.hpp"
#include "check/duty/way_in_findings.hpp"
#include "check/findings/axial_findings.hpp"
#include "check/findings/foul_findings.hpp"
#include "check/findings/radial_findings.hpp"
#include "check/findings/size_findings.hpp"
#include "check/findings/suit_findings.hpp"
#include "check/findings/taper_findings.hpp"
#include "check/findings/thread_findings.hpp"
#include "check/findings/unmatched_findings.hpp"
#include "check/findings/unseen_findings.hpp"
#include "check/findings/unsound.hpp"
#include "check/findings/width_findings.hpp"
#include "check/judging/judgement.hpp"
#include "check/judging/one_advice.hpp"
#include "group/making/worked_group.hpp"
#include "spotblue/base/stop.hpp"
#include "spotblue/check/check.hpp"

namespace spotblue {
namespace {

// The unit of its words.
void tell_in(Finding& finding, LengthUnit unit) {
  for (Saying* saying : {&finding.basis, &finding.advice, &finding.caution}) {
    saying->unit = unit;
  }
  for (std::vector<Quantity>* quantities : {&finding.wanted, &finding.found, &finding.margin}) {
    for (Quantity& quantity : *quantities) {
      if (auto* const saying = std::get_if<Saying>(&quantity.value)) {
        saying->unit = unit;
      }
    }
  }
}

// "radial-1", "axial-3": the first word of the kind and a count of its own.
void number(std::vector<Finding>& findings, LengthUnit unit) {
  std::map<std::string, int> counts;
  for (Finding& finding : findings) {
    const std::string word = finding.kind.substr(0, finding.kind.find(' '));
    finding.id = fmt::format("{}-{}", word, ++counts[word]);
    tell_in(finding, unit);
  }
}

// In the order in which a person asks: what fits what, then what it does, then what is left over.
// clang-format off
constexpr std::array kFindings{
    radial_findings,
    thread_findings,
    width_findings,
    taper_findings,
    axial_findings,
    foul_findings,
    press_findings,
    running_clearance_findings,
    bearing_findings,
    thrust_findings,
    keep_off_findings,
    mesh_findings,
    cut_findings,
    stock_findings,
    suit_findings,
    size_findings,
    end_play_findings,
    setting_findings,
    way_in_findings,
    unmatched_findings,
};
// clang-format on

constexpr double kNoTime = 3e9;  // s, a hundred years: none was given

// So many of them, the first, say of one pair what holds whatever else there is.
constexpr std::size_t kOfOnePair = 6;

// What a look left of `given`, or of the usual where it was given none. Choice of this program, no
// source.
double room_left(double given, double usual, double taken) {
  constexpr double kLeast = 0.25;
  return given < kNoTime ? std::max(given - taken, kLeast * given) : usual;
}

}  // namespace

Judgement judgement_of(const Job& job, const Look& look) {
  const TimeLimit time(
      room_left(look.settings.seconds, look.settings.limits.seconds, look.seconds.total));
  const MemoryLimit memory(
      room_left(look.settings.limits.memory_mb, look.settings.limits.memory_mb, look.memory_mb));
  Judgement judged;
  std::vector<Finding>& findings = judged.findings;
  if (lacks_parts(look)) {
    findings = not_looked_at_findings(look);
    number(findings, job.unit);
    return judged;
  }
  const DeclaredJob declared = declare(job, look);
  const auto add = [&](std::vector<Finding> more) {
    std::move(more.begin(), more.end(), std::back_inserter(findings));
  };
  const bool whole = look.not_looked_at.empty();
  const std::size_t kinds = whole ? kFindings.size() : kOfOnePair;
  const bool all = done_within_limits([&] {
    const WorkedGroup group = work_out(declared);
    for (std::size_t i = 0; i < kinds; ++i) {
      stop_if_asked();
      add(kFindings.at(i)(group));
    }
    stop_if_asked();
    judged.group = group_of(group);
  });
  if (!all) {
    findings.push_back(not_all_judged(look, findings.size()));
  }
  add(lost_findings(declared));
  add(unseen_findings(declared));
  if (!whole) {
    findings.push_back(rest_not_judged(declared));
  }
  if (findings.empty()) {
    findings.push_back(nothing_to_judge(declared));
  }
  leave_unsound_open(declared, findings);
  tell_one_window(findings);
  number(findings, job.unit);
  return judged;
}

std::vector<Finding> judge_job(const Job& job, const Look& look) {
  return judgement_of(job, look).findings;
}

}  // namespace spotblue
