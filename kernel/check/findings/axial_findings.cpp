#include "check/findings/axial_findings.hpp"

#include <cstddef>
#include <utility>

#include "check/findings/unseen_findings.hpp"
#include "check/words/words.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said.hpp"
#include "group/words/said_seats.hpp"

namespace spotblue {
namespace {

struct FoundGap {
  Length value, uncertainty;
  bool measured = false;
};

// A modelled gap is as sure as the sizes of the parts it lies between.
FoundGap found_gap(const DeclaredJob& declared, const AxialSeat& seat,
                   const MeasuredGap* measured) {
  const Length fallback = declared.job->settings.default_uncertainty;
  if (measured != nullptr) {
    return {measured->value, measured->uncertainty.value_or(fallback), true};
  }
  const auto exists = [&declared](OccurrenceId occurrence) {
    return state_of(declared, occurrence) == PartState::as_found &&
           drawn_at(declared, occurrence) == Drawn::at_the_size_wanted;
  };
  const bool uncertain = exists(seat.a.occurrence) || exists(seat.b.occurrence);
  return {Length::mm(seat.gap), uncertain ? fallback : Length(), false};
}

Finding describe(const DeclaredJob& declared, const AxialSeat& seat, const FoundGap& gap) {
  Finding finding;
  finding.kind = "axial gap";
  finding.about = {declared.names.reference(seat.a), declared.names.reference(seat.b)};
  finding.found = {{"gap", measure(gap.value)},
                   {"uncertainty", measure(gap.uncertainty)},
                   {"gap", gap.measured ? said::kGapMeasured : said::kAsModelled},
                   {"modelled_gap", millimetres(seat.gap)}};
  if (seat.centre_line && seat.inner && seat.outer) {
    finding.found.push_back({"inner", millimetres(*seat.inner)});
    finding.found.push_back({"outer", millimetres(*seat.outer)});
  }
  finding.found.push_back({"area", square_millimetres(seat.area)});
  return finding;
}

Finding judge_want(const DeclaredJob& declared, const AxialWant& want, const FoundGap& gap,
                   Finding finding) {
  const Length same = Length::mm(declared.look->settings.seats.same_length_mm);
  const Limits limits{want.least, want.greatest};
  finding.wanted = {{"want", std::string(word_of(want.kind))}};
  add_range(finding.wanted, "gap", limits);
  finding.margin = {
      {"gap", measure(margin({gap.value - gap.uncertainty, gap.value + gap.uncertainty}, limits))}};
  finding.basis =
      say(said::kGapWanted, word_of(want.kind), at_line(want.line)) + said::kJudgedByStandard;
  // Faces that touch are apart by rounding: the same length is the same length.
  finding.outcome = judge(gap.value, gap.uncertainty, {want.least - same, want.greatest + same});
  switch (finding.outcome) {
    case Outcome::conforming:
      finding.advice = said::kLeaveAsItIs;
      break;
    case Outcome::undecided:
      finding.advice = say(said::kMeasureGapCloser, gap.uncertainty);
      break;
    case Outcome::nonconforming:
      finding.advice = gap.value < want.least ? say(said::kTakeOffFace, want.least - gap.value)
                                              : say(said::kTakeUp, gap.value - want.greatest);
      break;
  }
  return finding;
}

// Whether nothing moves the two faces from each other: they are of one body.
bool held_together(const WorkedGroup& worked, const AxialSeat& seat) {
  const auto& body_of = worked.joints.moves_with;
  return body_of.at(seat.a.occurrence) == body_of.at(seat.b.occurrence);
}

Finding judge_held(Finding finding) {
  finding.outcome = Outcome::conforming;
  finding.basis = said::kOneBody;
  finding.advice = said::kHeldTogether;
  return finding;
}

Finding judge_alone(const DeclaredJob& declared, const AllowedOverlap* allowed, const FoundGap& gap,
                    Finding finding) {
  const Length same = Length::mm(declared.look->settings.seats.same_length_mm);
  const bool overlaps = gap.value < -same;
  if (overlaps && allowed != nullptr && -gap.value <= allowed->depth + same) {
    finding.outcome = Outcome::conforming;
    finding.wanted = {{"overlap_most", measure(allowed->depth)}};
    finding.margin = {{"overlap", measure(allowed->depth + gap.value)}};
    finding.basis = say(said::kAllowedOverlap, at_line(allowed->line), allowed->reason, -gap.value);
    finding.advice = said::kAllowed;
    return finding;
  }
  if (overlaps) {
    finding.outcome = Outcome::nonconforming;
    finding.basis = said::kFacesCannotOverlap;
    finding.advice = say(said::kFacesOverlap, -gap.value);
    return finding;
  }
  finding.outcome = Outcome::undecided;
  finding.basis = said::kNoGapDeclared;
  finding.advice =
      gap.value <= same ? Saying(said::kFacesTouch) : say(said::kFacesApart, gap.value);
  return finding;
}

}  // namespace

std::vector<Finding> axial_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  const std::vector<AxialSeat>& seats = declared.look->seats.axial;
  findings.reserve(seats.size());
  for (std::size_t i = 0; i < seats.size() && may_judge_more(); ++i) {
    const FoundGap gap = found_gap(declared, seats[i], declared.axial_gaps.at(i));
    Finding described = describe(declared, seats[i], gap);
    const AxialWant* want = declared.axial_wants.at(i);
    const Length same = Length::mm(declared.look->settings.seats.same_length_mm);
    const bool touch = gap.value <= same && -gap.value <= same;
    findings.push_back(
        want != nullptr ? judge_want(declared, *want, gap, std::move(described))
        : touch && held_together(worked, seats[i])
            ? judge_held(std::move(described))
            : judge_alone(declared, declared.axial_allowed.at(i), gap, std::move(described)));
  }
  return findings;
}

}  // namespace spotblue
