#include "check/duty/thrust_findings.hpp"

#include <algorithm>

#include "check/findings/unsound.hpp"
#include "check/fits/reasons.hpp"
#include "check/running/pair_limits.hpp"
#include "check/running/running.hpp"
#include "check/words/words.hpp"
#include "group/words/said.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/said_turning.hpp"
#include "spotblue/mechanics/thrust_face.hpp"

namespace spotblue {
namespace {

void judge_band(Finding& finding, Reasons& reasons, const ThrustRing& ring, Duty duty) {
  const Length width = radial_width(ring);
  const Length least = least_band(ring);
  finding.found.push_back({"band", measure(width)});
  finding.wanted.push_back({"band", measure(least), RangeEnd::least});
  finding.margin.push_back({"band", measure(width - least)});
  if (width < least) {
    reasons.add(duty == Duty::no_load_slow ? Outcome::undecided : Outcome::nonconforming,
                say(said::kBandNarrow, width, least));
  }
}

Finding judge_face(const DeclaredJob& declared, const ThrustFace& face) {
  const AxialSeat& seat = declared.look->seats.axial[face.seat];
  const ThrustRing ring{Diameter(Length::mm(seat.inner.value_or(0.0))),
                        Diameter(Length::mm(seat.outer.value_or(0.0)))};
  const PairLimits pair = pair_limits(declared, seat.a.occurrence, seat.b.occurrence);
  Finding finding;
  finding.kind = "thrust face";
  finding.about = {declared.names.reference(face.a), declared.names.reference(face.b)};
  finding.found = {{"turns", say(said::kPartNamed, declared.names.reference(face.turning))},
                   {"turning", turns_per_minute(face.rpm)},
                   {"gap", millimetres(face.gap)},
                   {"area", square_millimetres(seat.area)}};
  Reasons reasons;
  RunningLoad load;
  if (!seat.centre_line || !(ring.outer > ring.inner) || !(seat.area > 0.0)) {
    reasons.add(Outcome::undecided, said::kNoMeanRadius);
  } else {
    finding.found.push_back({"inner", measure(ring.inner.length())});
    finding.found.push_back({"outer", measure(ring.outer.length())});
    finding.found.push_back({"mean_radius", measure(mean_radius(ring).length())});
    finding.found.push_back({"full_area", square_millimetres(full_area_mm2(ring))});
    judge_band(finding, reasons, ring, face.duty);
    load = thrust_load(ring, std::min(seat.area, full_area_mm2(ring)), face.rpm, face.thrust_n);
    judge_running(finding, reasons, load, pair, face.duty,
                  say(said::kNoThrustGiven, declared.names.reference(face.turning)));
  }
  if (face.thrust_n) {
    finding.found.push_back({"thrust", newtons(*face.thrust_n)});
  }
  const bool perhaps = face.certainty == Certainty::perhaps;
  // What bears the whole thrust bears whatever of it comes to it; what does not, may never meet it.
  const bool open = perhaps && reasons.outcome() == Outcome::nonconforming;
  finding.outcome = open ? Outcome::undecided : reasons.outcome();
  finding.advice = reasons.advice(said::kLeaveThrustFace);
  finding.basis = say(said::kThrustBasis, limits_told(pair), DrawnSize{kLeastBand});
  if (perhaps) {
    finding.basis += say(said::kMeetNotKnown, face.why);
  }
  finding.caution = said::kTurningCaution;
  leave_missing_open(declared, finding);
  return finding;
}

}  // namespace

std::vector<Finding> thrust_findings(const WorkedGroup& worked) {
  std::vector<Finding> findings;
  for (const ThrustFace& face : worked.thrust_faces) {
    findings.push_back(judge_face(worked.declared, face));
  }
  return findings;
}

}  // namespace spotblue
