#include "check/duty/running_clearance_findings.hpp"

#include <cmath>
#include <optional>

#include "check/fits/reasons.hpp"
#include "check/running/running.hpp"
#include "check/words/words.hpp"
#include "group/joints/part_material.hpp"
#include "group/rings/assembled_clearance.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/said_running.hpp"

namespace spotblue {
namespace {

Limits limits(Interval mm) { return {Length::mm(mm.low), Length::mm(mm.high)}; }

bool is_same(Interval a, Interval b) {
  return std::abs(a.low - b.low) < kSizeRounding.in_mm() &&
         std::abs(a.high - b.high) < kSizeRounding.in_mm();
}

// Free sizes at the bench are what the fit's own finding judges.
bool says_more(const SizeStates& size) {
  return !size.assembled || !size.running || !is_same(*size.assembled, size.free) ||
         !is_same(*size.running, size.free);
}

Saying basis_of(const DeclaredJob& declared) {
  const Conditions& conditions = declared.job->conditions;
  return say(said::kRunningBasis, degrees_celsius(conditions.bench_c),
             degrees_celsius(conditions.running_c));
}

// As the two meet at the bench.
std::optional<Limits> cold_clearance(const SizeStates& hole, const SizeStates& shaft) {
  return hole.assembled && shaft.assembled
             ? std::optional(clearance_between(*hole.assembled, *shaft.assembled))
             : std::nullopt;
}

void add_both_states(Finding& finding, const SizeStates& hole, const SizeStates& shaft) {
  if (hole.assembled && !is_same(*hole.assembled, hole.free)) {
    add_range(finding.found, "bore_close_in",
              limits({hole.free.high - hole.assembled->high, hole.free.low - hole.assembled->low}));
    add_range(finding.found, "bore_after_pressing", limits(*hole.assembled));
  }
  if (shaft.assembled && !is_same(*shaft.assembled, shaft.free)) {
    add_range(finding.found, "outside_after_pressing", limits(*shaft.assembled));
  }
  if (const auto cold = cold_clearance(hole, shaft)) {
    add_range(finding.found, "clearance", *cold);
  }
}

// @param cold  at the bench, where it is known.
// @param open  why the sizes are known no closer.
void judge_warm(Finding& finding, const std::optional<Limits>& cold, Limits warm,
                const Saying& open) {
  add_range(finding.found, "warm_clearance", warm);
  Reasons reasons;
  if (cold && cold->upper <= Length()) {
    reasons.add(Outcome::nonconforming, say(said::kPressedAtBench, -cold->lower));
  }
  if (warm.lower <= Length() && warm.upper > Length() && !open.empty()) {
    reasons.add(Outcome::undecided, say(said::kMayBeLeft, warm, open));
  } else if (warm.upper <= Length()) {
    reasons.add(Outcome::nonconforming, say(said::kBinds, -warm.lower));
  } else if (warm.lower <= Length()) {
    reasons.add(Outcome::nonconforming, say(said::kMayBind, warm.lower));
  }
  finding.outcome = reasons.outcome();
  finding.advice = reasons.advice(say(said::kLeaveItSo, warm));
}

Finding judge(const DeclaredJob& declared, const RadialSeat& seat, const SurfaceSizes& surface) {
  Finding finding;
  finding.kind = "running clearance";
  finding.about = {declared.names.reference(seat.hole), declared.names.reference(seat.shaft)};
  finding.basis = basis_of(declared);
  finding.caution = said::kTurningCaution;
  add_both_states(finding, surface.hole, surface.shaft);
  const Saying& hole = surface.hole.unknown;
  const Saying& shaft = surface.shaft.unknown;
  const bool both = !hole.empty() && !shaft.empty() && hole != shaft;
  const Saying open = both ? hole + shaft : hole.empty() ? shaft : hole;
  if (surface.hole.running && surface.shaft.running) {
    judge_warm(finding, cold_clearance(surface.hole, surface.shaft),
               clearance_between(*surface.hole.running, *surface.shaft.running), open);
  } else {
    finding.outcome = Outcome::undecided;
    finding.advice = open;
  }
  return finding;
}

}  // namespace

std::vector<Finding> running_clearance_findings(const WorkedGroup& worked) {
  std::vector<Finding> findings;
  const std::vector<RadialSeat>& seats = worked.declared.look->seats.radial;
  for (std::size_t i = 0; i < seats.size(); ++i) {
    const SurfaceSizes& surface = worked.surfaces[i];
    const bool held = worked.joints.turns_with.at(seats[i].hole.occurrence) ==
                      worked.joints.turns_with.at(seats[i].shaft.occurrence);
    if (surface.pressing == Pressing::none && surface.sizes.wanted && !held &&
        (says_more(surface.hole) || says_more(surface.shaft))) {
      findings.push_back(judge(worked.declared, seats[i], surface));
    }
  }
  return findings;
}

}  // namespace spotblue
