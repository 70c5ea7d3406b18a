#include "check/duty/press_findings.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <optional>

#include "check/fits/reasons.hpp"
#include "check/press/press_case.hpp"
#include "check/press/press_warm.hpp"
#include "check/words/words.hpp"
#include "group/joints/part_material.hpp"
#include "group/words/said_cautions.hpp"
#include "group/words/size_text.hpp"
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

void add_part(Finding& finding, const std::string& part, const Governing& worst) {
  finding.found.push_back({part + "_hoop", megapascals(worst.stress.hoop_mpa)});
  finding.found.push_back({part + "_equivalent", megapascals(worst.stress.equivalent_mpa)});
  finding.found.push_back({part + "_worst_at", std::string(press_surface_text(worst.surface))});
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

std::string chilling_text(const SlipIn& slip) {
  if (slip.dry_ice_will_do) {
    return "dry ice is cold enough";
  }
  return slip.liquid_nitrogen_will_do ? "liquid nitrogen is cold enough, dry ice is not"
                                      : "no usual medium is cold enough";
}

SlipIn add_slip_in(Finding& finding, const DeclaredJob& declared, const PressCase& pressed) {
  const RadialSeat& seat = declared.look->seats.radial.at(pressed.seat);
  const Conditions& conditions = declared.job->conditions;
  const double clearance = conditions.slip_clearance ? conditions.slip_clearance->in_mm()
                                                     : kSlipClearance * seat.hole_diameter;
  const SlipIn slip = slip_in(*pressed.hub.elastic, *pressed.inner.elastic, seat.hole_diameter,
                              std::max(0.0, interference_mm(pressed, FitEnd::tightest)), clearance,
                              conditions.bench_c);
  finding.found.push_back({"slip_clearance", millimetres(clearance)});
  finding.found.push_back({"heat_hub_to", degrees_celsius(slip.heat_hub_to_c)});
  finding.found.push_back({"chill_inner_to", degrees_celsius(slip.chill_inner_to_c)});
  finding.found.push_back({"chilling", chilling_text(slip)});
  return slip;
}

// The greatest interference of the sizes at which the part just does not give way.
std::string enough_interference(const DeclaredJob& declared, const PressCase& pressed,
                                double utilisation) {
  const double lost =
      roughness_loss(FitEnd::tightest) * (pressed.rz_hub_um + pressed.rz_inner_um) / 1000.0;
  const double most = effective_mm(pressed, FitEnd::tightest) / utilisation + lost;
  return length_text(Length::mm(most), declared.job->unit);
}

void judge_part(Reasons& reasons, const DeclaredJob& declared, const PressCase& pressed,
                const Governing& worst, OccurrenceId occurrence) {
  const std::string& part = declared.names.id_of(occurrence);
  if (!worst.utilisation) {
    reasons.add(Outcome::undecided, fmt::format("no strength is known for {}", part));
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
  reasons.add(
      gives_way ? Outcome::nonconforming : Outcome::undecided,
      fmt::format("{} gives way at {}: {:.0f} percent of its strength is used; no more than {} "
                  "interference is enough",
                  part, press_surface_text(worst.surface), 100.0 * *worst.utilisation,
                  enough_interference(declared, pressed, *worst.utilisation)));
}

void judge_hold(Reasons& reasons, const DeclaredJob& declared, const PressCase& pressed) {
  if (!pressed.must_hold || effective_mm(pressed, FitEnd::loosest) > 0.0) {
    return;
  }
  const double needed = kGreatRoughnessLoss * (pressed.rz_hub_um + pressed.rz_inner_um) / 1000.0;
  const bool never = effective_mm(pressed, FitEnd::tightest) <= 0.0;
  reasons.add(never ? Outcome::nonconforming : Outcome::undecided,
              fmt::format("{} come out without hold: roughness alone takes up to {} of the "
                          "interference",
                          never ? "it will" : "it may",
                          length_text(Length::mm(needed), declared.job->unit)));
}

std::string how_to_join(const DeclaredJob& declared, const PressCase& pressed,
                        const PressStates& states, const SlipIn& slip) {
  const RadialSeat& seat = declared.look->seats.radial.at(pressed.seat);
  std::string text = fmt::format(
      "press with up to {:.1f} kN, square and oiled, or warm {} to {:.0f} C and slip {} in",
      states.tightest.force_to_press_n / 1000.0, declared.names.id_of(seat.hole.occurrence),
      slip.heat_hub_to_c, declared.names.id_of(seat.shaft.occurrence));
  if (slip.may_soften_hub) {
    text += fmt::format(" (above {:.0f} C hardened steel loses its temper: chill the inner part)",
                        kTemperLimit_c);
  }
  return text;
}

std::string press_basis(const DeclaredJob& declared, const PressCase& pressed) {
  const Conditions& conditions = declared.job->conditions;
  std::string basis = fmt::format(
      "thick rings, plane stress (Lame), by stretches of wall; roughness Rz {} and {} um, of which "
      "0.4 (DIN 7190-1:2017) is lost at the tightest and 0.8 (DIN 7190 before) at the loosest; "
      "friction {} to {}",
      pressed.rz_hub_um, pressed.rz_inner_um, conditions.friction_least,
      conditions.friction_greatest);
  basis += conditions.slip_clearance
               ? "; slip clearance from the job"
               : "; slip clearance 0.001 of the diameter (common practice, no source)";
  basis += "; yield by von Mises, castings by greatest tension; elastic, no edges, no keyways";
  return basis;
}

Finding judge_press(const DeclaredJob& declared, const PressCase& pressed) {
  const RadialSeat& seat = declared.look->seats.radial.at(pressed.seat);
  Finding finding;
  finding.kind = "press fit";
  finding.about = {declared.names.reference(seat.hole), declared.names.reference(seat.shaft)};
  finding.caution = is_casting(pressed.hub) || is_casting(pressed.inner) ? said::kCastingCaution
                                                                         : said::kPressCaution;
  finding.basis = press_basis(declared, pressed);
  add_sizes(finding, pressed);
  if (!pressed.blind_spots.empty()) {
    finding.found.push_back(
        {"blind_spots", fmt::format("{}", fmt::join(pressed.blind_spots, "; "))});
  }
  std::string unknown = not_computable(declared, pressed);
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
  const SlipIn slip = add_slip_in(finding, declared, pressed);
  Reasons reasons;
  judge_part(reasons, declared, pressed, states.tightest.hub, seat.hole.occurrence);
  judge_part(reasons, declared, pressed, states.tightest.inner, seat.shaft.occurrence);
  judge_hold(reasons, declared, pressed);
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
