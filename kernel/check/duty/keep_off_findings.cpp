#include "check/duty/keep_off_findings.hpp"

#include <utility>

#include "check/words/words.hpp"
#include "group/making/kept_off.hpp"
#include "group/sizes/size_range.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said.hpp"
#include "group/words/said_keep_off.hpp"

namespace spotblue {
namespace {

Saying too_near(Length gap, const NearPlace& place, Length least) {
  return gap <= Length() ? say(said::kTheyTouch, place.where, least - gap)
                         : say(said::kOnlyApart, gap, place.where, least - gap);
}

void judge_place(const KeepOff& entry, const NearPlace& place, Finding& finding) {
  const Length least = Length::mm(place.gap.low);
  const Length most = Length::mm(place.gap.high);
  const Length middle = Length::mm(0.5 * (place.gap.low + place.gap.high));
  finding.found = {{"gap", measure(middle)},
                   {"gap", measure(least), RangeEnd::least},
                   {"gap", measure(most), RangeEnd::greatest},
                   {"where", place.where},
                   {"how", place.how}};
  finding.margin = {{"gap", measure(least - entry.least)}};
  const Length same = kSizeRounding;
  // A measurement is a judgement of what it read, limits one of all that they allow.
  if ((place.measured ? middle : most) < entry.least - same) {
    finding.outcome = Outcome::nonconforming;
    finding.advice = too_near(place.measured ? middle : most, place, entry.least);
  } else if (least < entry.least - same) {
    finding.outcome = Outcome::undecided;
    finding.advice = place.measured ? say(said::kMeasureGap, place.where, middle - least)
                                    : say(said::kMayComeTo, least, place.where);
  } else {
    finding.outcome = Outcome::conforming;
    finding.advice = said::kLeaveAsItIs;
  }
}

// Nothing is known of where they come near.
void judge_boxes(const KeepOff& entry, const KeptOff& kept, Finding& finding) {
  const Length boxes = Length::mm(kept.boxes_apart);
  finding.found = {{"gap", said::kNoFacesNear}};
  if (boxes >= entry.least) {
    finding.outcome = Outcome::conforming;
    finding.found.push_back({"boxes_apart", measure(boxes)});
    finding.margin = {{"gap", measure(boxes - entry.least)}};
    finding.advice = said::kLeaveAsItIs;
    return;
  }
  finding.outcome = Outcome::undecided;
  finding.advice = say(said::kTryFeeler, entry.least);
}

// Seats say where the two face each other, not where a corner comes nearer.
void leave_unmeasured_open(const KeepOff& entry, const KeptOff& kept, Finding& finding) {
  if (kept.drawn) {
    finding.found.push_back({"least_distance_drawn", millimetres(*kept.drawn)});
    return;
  }
  finding.found.push_back({"least_distance_drawn", kept.not_measured});
  if (kept.solids && finding.outcome == Outcome::conforming &&
      Length::mm(kept.boxes_apart) < entry.least) {
    finding.outcome = Outcome::undecided;
    finding.advice = kept.not_measured + say(said::kTryFeeler, entry.least);
  }
}

}  // namespace

std::vector<Finding> keep_off_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  for (const KeepOff& entry : declared.job->keep_off) {
    const KeptOff kept = kept_off(worked, entry);
    Finding finding;
    finding.kind = "keep off";
    finding.about = {{entry.a, kept.a}, {entry.b, kept.b}};
    finding.wanted = {{"gap", measure(entry.least), RangeEnd::least}};
    if (const NearPlace* const nearest = kept.nearest()) {
      judge_place(entry, *nearest, finding);
    } else {
      judge_boxes(entry, kept, finding);
    }
    leave_unmeasured_open(entry, kept, finding);
    finding.basis =
        (entry.reason.empty() ? say(said::kMustStayClear, at_line(entry.line))
                              : say(said::kMustStayClearFor, entry.reason, at_line(entry.line))) +
        said::kLeastGap + say(said::kAsItIs, kIso14253);
    findings.push_back(std::move(finding));
  }
  return findings;
}

}  // namespace spotblue
