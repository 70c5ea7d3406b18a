#include "check/findings/taper_findings.hpp"

#include <fmt/format.h>

#include <cmath>
#include <cstddef>
#include <numbers>

#include "check/findings/unseen_findings.hpp"
#include "check/words/words.hpp"
#include "group/words/size_text.hpp"

namespace spotblue {
namespace {

constexpr double kDegrees = 180.0 / std::numbers::pi;
// Rounding of angles that are written with fifteen digits.
constexpr double kSameAngle_deg = 1e-9;

std::string taper_advice(const TaperSeat& seat, double difference_deg, bool angle_good,
                         bool gap_good, LengthUnit unit) {
  if (!angle_good) {
    return fmt::format("the cones bear at the {} end only: half angles differ by {:.4f} deg",
                       difference_deg < 0.0 ? "small" : "large", std::abs(difference_deg));
  }
  return gap_good ? "prove it with blue before use"
                  : fmt::format("the gap between the cones is {}: move them along the axis",
                                length_text(Length::mm(seat.gap), unit));
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
    finding.basis = "no taper declared";
    finding.advice = fmt::format(
        "half angles differ by {:.4f} deg; say in [[tapers]] how near they must agree, or blue it",
        difference_deg);
    return finding;
  }
  const double room_deg = want->angle_within_deg - std::abs(difference_deg);
  finding.wanted = {{"half_angle_within", angle_of_degrees(want->angle_within_deg)}};
  finding.margin = {{"half_angle", angle_of_degrees(room_deg)}};
  finding.basis = "limits of the taper" + from_line(want->line);
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
  finding.advice = taper_advice(seat, difference_deg, angle_good, gap_good, declared.job->unit);
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
