#include <fmt/format.h>

#include <array>
#include <iterator>
#include <map>
#include <string>
#include <utility>

#include "check/declared.hpp"
#include "check/seat_findings.hpp"
#include "spotblue/base/stop.hpp"
#include "spotblue/check/check.hpp"

namespace spotblue {
namespace {

// "radial-1", "axial-3": the first word of the kind and a count of its own.
void number(std::vector<Finding>& findings) {
  std::map<std::string, int> counts;
  for (Finding& finding : findings) {
    const std::string word = finding.kind.substr(0, finding.kind.find(' '));
    finding.id = fmt::format("{}-{}", word, ++counts[word]);
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
    clash_findings,
    press_findings,
    sleeve_findings,
    bearing_findings,
    thrust_findings,
    keep_off_findings,
    mesh_findings,
    cut_findings,
    stock_findings,
    suit_findings,
    size_findings,
    end_play_findings,
    way_in_findings,
    unmatched_findings,
    unseen_findings,
};
// clang-format on

}  // namespace

std::vector<Finding> judge_job(const Job& job, const Look& look) {
  const DeclaredJob declared = declare(job, look);
  std::vector<Finding> findings;
  for (const auto judge_kind : kFindings) {
    stop_if_asked();
    std::vector<Finding> more = judge_kind(declared);
    std::move(more.begin(), more.end(), std::back_inserter(findings));
  }
  if (findings.empty()) {
    findings.push_back(nothing_to_judge(declared));
  }
  number(findings);
  return findings;
}

}  // namespace spotblue
