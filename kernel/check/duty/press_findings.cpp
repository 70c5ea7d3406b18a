#include "check/duty/press_findings.hpp"

#include <algorithm>
#include <optional>

#include "check/fits/reasons.hpp"
#include "check/press/press_case.hpp"
#include "check/press/press_warm.hpp"
#include "check/words/words.hpp"
#include "group/joints/part_material.hpp"
#include "group/words/said.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/said_press.hpp"
#include "spotblue/mechanics/shrink_in.hpp"

namespace spotblue {
namespace {

// For each millimetre of diameter; common practice, no source.
constexpr double kSlipClearance = 0.001;

struct PressStates {
  PressState tightest, middle, loosest;
};

bool is_casting(const PartMaterial& material) {
  return material.elastic && material.elastic->gives_way == GivesWay::brittle;
}

void add_sizes(Finding& finding, const PressCase& pressed) {
  add_range(finding.found, "interference",
            {Length::mm(interference_mm(pressed, FitEnd::loosest)),
             Length::mm(interference_mm(pressed, FitEnd::tightest))});
  add_range(finding.found, "effective_interference",
            {Length::mm(effective_mm(pressed, FitEnd::loosest)),
             Length::mm(effective_mm(pressed, FitEnd::tightest))});
}

const Said& surface_said(PressSurface surface) {
  switch (surface) {
    case PressSurface::hub_bore:
      return said::kHubBore;
    case PressSurface::hub_outside:
      return said::kHubOutside;
    case PressSurface::inner_outside:
      return said::kInnerOutside;
    case PressSurface::inner_bore:
      break;
  }
  return said::kInnerBore;
}

void add_part(Finding& finding, const std::string& part, const Governing& worst) {
  finding.found.push_back({part + "_hoop", megapascals(worst.stress.hoop_mpa)});
  finding.found.push_back({part + "_equivalent", megapascals(worst.stress.equivalent_mpa)});
  finding.found.push_back({part + "_worst_at", surface_said(worst.surface)});
  if (worst.utilisation) {
    finding.found.push_back({part + "_utilisation", percent(100.0 * *worst.utilisation)});
    finding.margin.push_back({part + "_utilisation", percent(100.0 * (1.0 - *worst.utilisation))});
  }
}

void add_states(Finding& finding, const PressStates& states) {
  finding.found.push_back(
      {"pressure", megapascals(states.loosest.least_pressure_mpa), RangeEnd::least});
  finding.found.push_back({"pressure", megapascals(states.middle.greatest_pressure_mpa)});
  finding.found.push_back(
      {"pressure", megapascals(states.tightest.greatest_pressure_mpa), RangeEnd::greatest});
  add_part(finding, "hub", states.tightest.hub);
  add_part(finding, "inner", states.tightest.inner);
  finding.found.push_back({"force_to_press", newtons(states.middle.force_to_press_n)});
  finding.found.push_back(
      {"force_to_press", newtons(states.tightest.force_to_press_n), RangeEnd::greatest});
  finding.found.push_back({"axial_hold", newtons(states.loosest.axial_hold_n), RangeEnd::least});
  finding.found.push_back({"axial_hold", newtons(states.middle.axial_hold_n)});
  finding.found.push_back(
      {"holding_torque", newton_metres(states.loosest.holding_torque_nm), RangeEnd::least});
  finding.found.push_back({"holding_torque", newton_metres(states.middle.holding_torque_nm)});
  add_range(
      finding.found, "bore_close_in",
      {Length::mm(states.loosest.bore_close_in_mm), Length::mm(states.tightest.bore_close_in_mm)});
  finding.found.push_back({"bore_close_in", millimetres(states.middle.bore_close_in_mm)});
  finding.found.push_back(
      {"hub_growth", millimetres(states.tightest.hub_growth_mm), RangeEnd::greatest});
}

const Said& chilling(const SlipIn& slip) {
  if (slip.dry_ice_will_do) {
    return said::kDryIceWillDo;
  }
  return slip.liquid_nitrogen_will_do ? said::kLiquidNitrogenWillDo : said::kNothingColdEnough;
}

struct SlipAdvice {
  SlipIn slip;
  SlipBounds bounds;
};

SlipAdvice add_slip_in(Finding& finding, const DeclaredJob& declared, const PressCase& pressed) {
  const RadialSeat& seat = declared.look->seats.radial.at(pressed.seat);
  const Conditions& conditions = declared.job->conditions;
  const double clearance = conditions.slip_clearance ? conditions.slip_clearance->in_mm()
                                                     : kSlipClearance * seat.hole_diameter;
  const SlipBounds bounds =
      slip_bounds(press_fit_at(declared, pressed, FitEnd::tightest), conditions.bench_c);
  const SlipIn slip = slip_in(*pressed.hub.elastic, *pressed.inner.elastic, seat.hole_diameter,
                              std::max(0.0, interference_mm(pressed, FitEnd::tightest)), clearance,
                              conditions.bench_c, bounds);
  finding.found.push_back({"slip_clearance", millimetres(clearance)});
  if (slip.heat_hub_to_c) {
    finding.found.push_back({"heat_hub_to", degrees_celsius(*slip.heat_hub_to_c)});
  }
  // Only what a usual medium reaches.
  if (slip.chill_inner_to_c && (slip.dry_ice_will_do || slip.liquid_nitrogen_will_do)) {
    finding.found.push_back({"chill_inner_to", degrees_celsius(*slip.chill_inner_to_c)});
  }
  finding.found.push_back({"chilling", chilling(slip)});
  return {slip, bounds};
}

// The greatest interference of the sizes at which the part just does not give way.
Length enough_interference(const PressCase& pressed, double utilisation) {
  const double lost =
      roughness_loss(FitEnd::tightest) * (pressed.rz_hub_um + pressed.rz_inner_um) / 1000.0;
  return Length::mm(effective_mm(pressed, FitEnd::tightest) / utilisation + lost);
}

void judge_part(Reasons& reasons, const DeclaredJob& declared, const PressCase& pressed,
                const Governing& worst, OccurrenceId occurrence) {
  const Reference part = declared.names.reference(occurrence);
  if (!worst.utilisation) {
    reasons.add(Outcome::undecided, say(said::kNoStrength, part));
    return;
  }
  if (*worst.utilisation <= 1.0) {
    return;
  }
  // A part still to make does not excuse itself with its tolerance; a measurement does.
  const double exact = -pressed.sizes.found.without_uncertainty.lower.in_mm();
  const double effective = effective_interference_mm(exact, pressed.rz_hub_um, pressed.rz_inner_um,
                                                     roughness_loss(FitEnd::tightest));
  const double share = effective / effective_mm(pressed, FitEnd::tightest);
  const bool gives_way = *worst.utilisation * share > 1.0;
  reasons.add(gives_way ? Outcome::nonconforming : Outcome::undecided,
              say(said::kGivesWay, part, Saying(surface_said(worst.surface)),
                  Figure{100.0 * *worst.utilisation}) +
                  say(said::kEnoughInterference, enough_interference(pressed, *worst.utilisation)));
}

// What conforms by the pressed length alone and may not with the metal beyond it.
void judge_beyond(Reasons& reasons, const DeclaredJob& declared, const Governing& alone,
                  const Governing& stiffest, OccurrenceId occurrence) {
  if (alone.utilisation && stiffest.utilisation && *alone.utilisation <= 1.0 &&
      *stiffest.utilisation > 1.0) {
    reasons.add(Outcome::undecided,
                say(said::kMayGiveWay, declared.names.reference(occurrence),
                    Saying(surface_said(stiffest.surface)), Figure{100.0 * *stiffest.utilisation}));
  }
}

void judge_hold(Reasons& reasons, const PressCase& pressed) {
  if (!pressed.must_hold || effective_mm(pressed, FitEnd::loosest) > 0.0) {
    return;
  }
  const double needed = kGreatRoughnessLoss * (pressed.rz_hub_um + pressed.rz_inner_um) / 1000.0;
  const bool never = effective_mm(pressed, FitEnd::tightest) <= 0.0;
  reasons.add(never ? Outcome::nonconforming : Outcome::undecided,
              say(never ? said::kWillNotHold : said::kMayNotHold, Length::mm(needed)));
}

Saying how_to_join(const DeclaredJob& declared, const PressCase& pressed, const PressStates& states,
                   const SlipAdvice& advice) {
  const RadialSeat& seat = declared.look->seats.radial.at(pressed.seat);
  const SlipIn& slip = advice.slip;
  if (!slip.heat_hub_to_c) {
    Saying how = say(said::kPressOnly, newtons(states.tightest.force_to_press_n));
    if (advice.bounds.hottest_c) {
      how += say(said::kYieldsBeforeItSlips, degrees_celsius(*advice.bounds.hottest_c));
    }
    return how;
  }
  Saying how =
      say(said::kHowToPress, newtons(states.tightest.force_to_press_n),
          declared.names.reference(seat.hole.occurrence), degrees_celsius(*slip.heat_hub_to_c),
          declared.names.reference(seat.shaft.occurrence));
  if (slip.may_soften_hub) {
    how += say(said::kLosesTemper, degrees_celsius(kTemperLimit_c));
  }
  return how;
}

Saying press_basis(const Conditions& conditions, const PressCase& pressed) {
  return Saying(said::kThickRings) +
         say(said::kRoughnessLost, micrometres(pressed.rz_hub_um), micrometres(pressed.rz_inner_um),
             plain_number(kSmallRoughnessLoss), plain_number(kGreatRoughnessLoss)) +
         say(said::kFrictionUsed, plain_number(conditions.friction_least),
             plain_number(conditions.friction_greatest)) +
         (conditions.slip_clearance ? Saying(said::kSlipByJob)
                                    : say(said::kSlipByPractice, plain_number(kSlipClearance))) +
         said::kYieldRules + said::kElasticOnly;
}

Finding judge_press(const DeclaredJob& declared, const PressCase& pressed) {
  const RadialSeat& seat = declared.look->seats.radial.at(pressed.seat);
  Finding finding;
  finding.kind = "press fit";
  finding.about = {declared.names.reference(seat.hole), declared.names.reference(seat.shaft)};
  finding.caution = is_casting(pressed.hub) || is_casting(pressed.inner) ? said::kCastingCaution
                                                                         : said::kPressCaution;
  finding.basis = press_basis(declared.job->conditions, pressed);
  add_sizes(finding, pressed);
  if (!pressed.blind_spots.empty()) {
    Saying not_allowed_for;
    for (const std::string& blind_spot : pressed.blind_spots) {
      not_allowed_for += say(said::kAsItIs, blind_spot);
    }
    finding.found.push_back({"blind_spots", not_allowed_for});
  }
  Saying unknown = not_computable(declared, pressed);
  if (unknown.empty()) {
    unknown = pressed.third;
  }
  if (!unknown.empty()) {
    finding.outcome = Outcome::undecided;
    finding.advice = unknown;
    return finding;
  }
  const PressStates states{press_state(declared, pressed, FitEnd::tightest),
                           press_state(declared, pressed, FitEnd::middle),
                           press_state(declared, pressed, FitEnd::loosest)};
  add_states(finding, states);
  const SlipAdvice slip = add_slip_in(finding, declared, pressed);
  Reasons reasons;
  judge_part(reasons, declared, pressed, states.tightest.hub, seat.hole.occurrence);
  judge_part(reasons, declared, pressed, states.tightest.inner, seat.shaft.occurrence);
  const PressState stiffest = press_fit(stiffest_press_fit(declared, pressed));
  judge_beyond(reasons, declared, states.tightest.hub, stiffest.hub, seat.hole.occurrence);
  judge_beyond(reasons, declared, states.tightest.inner, stiffest.inner, seat.shaft.occurrence);
  judge_hold(reasons, pressed);
  if (!pressed.blind_spots.empty()) {
    reasons.add(Outcome::undecided, said::kCutsNotAllowedFor);
  }
  judge_warm_press(finding, reasons, declared, pressed);
  finding.outcome = reasons.outcome();
  finding.advice = reasons.advice(how_to_join(declared, pressed, states, slip));
  return finding;
}

}  // namespace

std::vector<Finding> press_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  for (const PressCase& pressed : press_cases(worked)) {
    findings.push_back(judge_press(declared, pressed));
  }
  return findings;
}

}  // namespace spotblue
