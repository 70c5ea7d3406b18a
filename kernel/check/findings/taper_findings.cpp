#include "check/findings/taper_findings.hpp"

#include <cmath>
#include <cstddef>
#include <numbers>

#include "check/findings/unseen_findings.hpp"
#include "check/fits/fit_verdict.hpp"
#include "check/words/words.hpp"
#include "group/words/at_line.hpp"
#include "group/words/said_seats.hpp"

namespace spotblue {
namespace {

constexpr double kDegrees = 180.0 / std::numbers::pi;
// Rounding of angles that are written with fifteen digits.
constexpr double kSameAngle_deg = 1e-9;

Saying taper_advice(const TaperSeat& seat, double difference_deg, bool angle_good, bool gap_good) {
  if (!angle_good) {
    return say(difference_deg < 0.0 ? said::kBearsAtSmallEnd : said::kBearsAtLargeEnd,
               angle_of_degrees(std::abs(difference_deg)));
  }
  return gap_good ? Saying(said::kProveWithBlue) : say(said::kConesApart, Length::mm(seat.gap));
}

// What offset and tilt take from the gap on one side, square to the surface.
Length off_line(const TaperSeat& seat) {
  return Length::mm(seat.offset * std::cos(seat.hole_half_angle) +
                    0.5 * seat.engaged * std::tan(seat.tilt));
}

// Cones that bear all round stand in line.
Verdict verdict_on_line(const TaperSeat& seat, Length same) {
  const Length lost = off_line(seat);
  const Length gap = Length::mm(seat.gap);
  if (lost <= same || std::abs(gap.in_mm()) - lost.in_mm() >= -same.in_mm()) {
    return {};
  }
  return {Outcome::nonconforming,
          gap > Length() ? say(said::kConesFoul, lost, gap) : say(said::kConesOffLine, lost, -gap)};
}

void judge_line(const DeclaredJob& declared, const TaperSeat& seat, Finding& finding) {
  const Verdict verdict =
      worse(verdict_on_line(seat, Length::mm(declared.look->settings.seats.same_length_mm)),
            Verdict{finding.outcome, finding.advice});
  finding.outcome = verdict.outcome;
  finding.advice = verdict.advice;
}

Finding judge_taper(const DeclaredJob& declared, const TaperSeat& seat, const TaperWant* want) {
  const double difference_deg = (seat.shaft_half_angle - seat.hole_half_angle) * kDegrees;
  Finding finding;
  finding.kind = "taper";
  finding.about = {declared.names.reference(seat.hole), declared.names.reference(seat.shaft)};
  finding.found = {{"half_angle_difference", angle_of_degrees(difference_deg)},
                   {"hole_half_angle", angle(seat.hole_half_angle)},
                   {"shaft_half_angle", angle(seat.shaft_half_angle)},
                   {"gap", millimetres(seat.gap)},
                   {"offset", millimetres(seat.offset)},
                   {"tilt", angle(seat.tilt)},
                   {"engaged", millimetres(seat.engaged)},
                   {"diameter", millimetres(seat.diameter)}};
  if (want == nullptr) {
    finding.basis = said::kNoTaperDeclared;
    finding.advice = say(said::kTaperDiffers, angle_of_degrees(difference_deg));
    judge_line(declared, seat, finding);
    return finding;
  }
  const double room_deg = want->angle_within_deg - std::abs(difference_deg);
  finding.wanted = {{"half_angle_within", angle_of_degrees(want->angle_within_deg)}};
  finding.margin = {{"half_angle", angle_of_degrees(room_deg)}};
  finding.basis = say(said::kLimitsOfTaper, at_line(want->line));
  const bool angle_good = room_deg >= -kSameAngle_deg;
  bool gap_good = true;
  if (want->gap) {
    const Limits gap{want->gap->least, want->gap->greatest};
    const Length found = Length::mm(seat.gap);
    gap_good = judge(found, Length(), gap) == Outcome::conforming;
    add_range(finding.wanted, "gap", gap);
    finding.margin.push_back({"gap", measure(margin({found, found}, gap))});
  }
  finding.outcome = angle_good && gap_good ? Outcome::conforming : Outcome::nonconforming;
  finding.advice = taper_advice(seat, difference_deg, angle_good, gap_good);
  judge_line(declared, seat, finding);
  return finding;
}

}  // namespace

std::vector<Finding> taper_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  const std::vector<TaperSeat>& seats = declared.look->seats.taper;
  findings.reserve(seats.size());
  for (std::size_t i = 0; i < seats.size() && may_judge_more(); ++i) {
    findings.push_back(judge_taper(declared, seats[i], declared.taper_wants.at(i)));
  }
  return findings;
}

}  // namespace spotblue
