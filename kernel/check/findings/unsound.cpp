#include "check/findings/unsound.hpp"

#include <algorithm>
#include <string>
#include <string_view>

#include "check/findings/unseen_findings.hpp"
#include "group/words/said_unseen.hpp"
#include "spotblue/job/feature_name.hpp"

namespace spotblue {
namespace {

constexpr const char* kUnsound = "unsound";

// The part of "Bush" and of "Bush: bore 20", however it is spelled; empty where none of that name
// stands in the model.
std::string part_about(const Names& names, std::string about) {
  while (!about.empty() && !names.is_part(about)) {
    about = part_of_feature(about);
  }
  return about;
}

void leave_open(Finding& finding, std::string_view part, std::string_view why) {
  finding.outcome = Outcome::undecided;
  finding.advice = say(said::kPutRightFirst, Reference(std::string(part)));
  finding.found.push_back({kUnsound, say(said::kUnsoundPart, Reference(std::string(part)), why)});
}

// Whether it did, or was before.
bool leave_part_open(const DeclaredJob& declared, OccurrenceId occurrence, Finding& finding) {
  const std::string& why = declared.names.flaw_of(occurrence);
  if (!why.empty()) {
    leave_open(finding, declared.names.id_of(occurrence), why);
  }
  return !why.empty();
}

bool is_left_open(const Finding& finding) {
  return std::ranges::any_of(finding.found,
                             [](const Quantity& one) { return one.name == kUnsound; });
}

}  // namespace

void leave_unsound_open(const DeclaredJob& declared, std::vector<Finding>& findings) {
  for (Finding& finding : findings) {
    if (finding.kind == kUnseen || is_left_open(finding)) {
      continue;
    }
    for (const Reference& about : finding.about) {
      const std::string part = part_about(declared.names, about.name);
      if (const std::string& why = declared.names.flaw_of(part); !why.empty()) {
        leave_open(finding, part, why);
        break;
      }
    }
  }
}

void leave_parts_open(const DeclaredJob& declared, std::span<const OccurrenceId> occurrences,
                      Finding& finding) {
  for (const OccurrenceId occurrence : occurrences) {
    if (leave_part_open(declared, occurrence, finding)) {
      return;
    }
  }
}

void leave_neighbours_open(const DeclaredJob& declared, std::span<const OccurrenceId> occurrences,
                           Finding& finding) {
  const List<Occurrence>& all = declared.look->model.occurrences;
  for (OccurrenceId other{}; other < all.size(); ++other) {
    const bool near = std::any_of(occurrences.begin(), occurrences.end(), [&](OccurrenceId one) {
      return one == other || overlap(all[one].box, all[other].box);
    });
    if (near && leave_part_open(declared, other, finding)) {
      return;
    }
  }
}

void leave_missing_open(const DeclaredJob& declared, Finding& finding) {
  const std::vector<Note>& missing = declared.look->model.not_compared;
  if (missing.empty()) {
    return;
  }
  const Saying more = missing.size() == 1 ? Saying() : say(said::kAndMore, missing.size() - 1);
  finding.found.push_back(
      {"not_compared", say(said::kNotArrived, missing.front().about, missing.front().text) + more});
  if (finding.outcome != Outcome::undecided) {
    finding.outcome = Outcome::undecided;
    finding.advice = said::kMayStandHere;
  }
}

}  // namespace spotblue
