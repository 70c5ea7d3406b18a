#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <iterator>
#include <map>
#include <string>
#include <utility>

#include "check/declared.hpp"
#include "check/seat_findings.hpp"
#include "check/unsound.hpp"
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

// So many of them, the first, say of one pair what holds whatever else there is.
constexpr std::size_t kOfOnePair = 6;

// Whether parts were not read or not measured, so that the job's names can't be held against them.
bool lacks_parts(const Look& look) {
  const std::vector<Product>& products = look.model.products;
  return !look.not_looked_at.empty() &&
         (products.empty() || std::any_of(products.begin(), products.end(),
                                          [](const Product& one) { return is_empty(one.box); }));
}

}  // namespace

std::vector<Finding> judge_job(const Job& job, const Look& look) {
  std::vector<Finding> findings;
  if (lacks_parts(look)) {
    findings = not_looked_at_findings(look);
    number(findings);
    return findings;
  }
  const DeclaredJob declared = declare(job, look);
  const auto add = [&](std::vector<Finding> more) {
    std::move(more.begin(), more.end(), std::back_inserter(findings));
  };
  const bool whole = look.not_looked_at.empty();
  for (std::size_t i = 0; i < (whole ? kFindings.size() : kOfOnePair); ++i) {
    stop_if_asked();
    add(kFindings.at(i)(declared));
  }
  if (!whole) {
    add(unseen_findings(declared));
    findings.push_back(rest_not_judged(declared));
  }
  if (findings.empty()) {
    findings.push_back(nothing_to_judge(declared));
  }
  leave_unsound_open(declared, findings);
  number(findings);
  return findings;
}

}  // namespace spotblue
