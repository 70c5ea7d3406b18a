#include "check/duty/cut_findings.hpp"

#include <string>

#include "check/duty/cut_verdict.hpp"
#include "group/cuts/cut_stress.hpp"
#include "group/cuts/shaft_cut.hpp"
#include "group/words/said_cut.hpp"
#include "spotblue/mechanics/shaft_section.hpp"
#include "spotblue/mechanics/stress_concentration.hpp"

namespace spotblue {
namespace {

void add_corner(std::vector<Quantity>& found, const ShaftCut& cut) {
  for (const Shoulder& shoulder : cut.round.shoulders) {
    found.push_back({"shoulder", millimetres(shoulder.diameter_mm)});
  }
  if (cut.round.shoulders.empty()) {
    return;
  }
  found.push_back({"fillet", millimetres(cut.fillet_mm.value_or(0.0))});
  const std::string corner = cut.corner.sharp ? "sharpest_corner_" : "corner_";
  const double left = 100.0 * strength_left(cut.before, cut.least);
  if (cut.corner.bending) {
    found.push_back({corner + "bending_kt", plain_number(*cut.corner.bending)});
    found.push_back({"bending_left_in_corner", percent(left / *cut.corner.bending)});
  }
  if (cut.corner.torsion) {
    found.push_back({corner + "torsion_kt", plain_number(*cut.corner.torsion)});
    found.push_back({"torsion_left_in_corner", percent(left / *cut.corner.torsion)});
  }
}

void add_keyseat(std::vector<Quantity>& found, const ShaftCut& cut) {
  if (cut.round.keyseats.empty()) {
    return;
  }
  found.push_back({"keyseat_distance", millimetres(cut.round.keyseats.front().distance_mm)});
  const ShaftNotch milled = ShaftNotch::end_milled_keyseat;
  found.push_back(
      {"keyseat_bending_kt", plain_number(*first_pass_factor(milled, ShaftLoad::bending).factor)});
  found.push_back(
      {"keyseat_torsion_kt", plain_number(*first_pass_factor(milled, ShaftLoad::torsion).factor)});
}

void add_stress(Finding& finding, const DeclaredJob& declared, const ShaftCut& cut) {
  const Cut& job = *cut.cut;
  if (!job.torque_nm && !job.bending_nm) {
    return;
  }
  const double torque = job.torque_nm.value_or(0.0);
  const double bending = job.bending_nm.value_or(0.0);
  const CutStress stress = cut_stress(cut, torque, bending);
  finding.found.push_back({"torsion_before", megapascals(stress.before.torsion_mpa)});
  finding.found.push_back({"torsion", megapascals(stress.after.torsion_mpa)});
  finding.found.push_back({"bending_before", megapascals(stress.before.bending_mpa)});
  finding.found.push_back({"bending", megapascals(stress.after.bending_mpa)});
  finding.found.push_back({"greatest_stress", megapascals(stress.peak_mpa)});
  if (const auto strength = strength_of(declared, cut.feature.occurrence)) {
    finding.wanted.push_back({"greatest_stress", megapascals(kOfYieldAllowed * strength->mpa)});
    finding.margin.push_back(
        {"greatest_stress", megapascals(kOfYieldAllowed * strength->mpa - stress.peak_mpa)});
  }
}

Saying cut_basis(const ShaftCut& cut) {
  const auto keyseat = [](ShaftLoad load) {
    return first_pass_factor(ShaftNotch::end_milled_keyseat, load).factor.value();
  };
  const Saying groove = cut.grooves.empty() ? Saying() : Saying(said::kGrooveFactors);
  return Saying(said::kRoundShaft) + groove +
         say(said::kCornerCurves, Figure{keyseat(ShaftLoad::bending), 2},
             Figure{keyseat(ShaftLoad::torsion), 1}) +
         said::kHalfOfYield + said::kNoFatigue;
}

Finding judge_cut(const DeclaredJob& declared, const ShaftCut& cut) {
  Finding finding;
  finding.kind = "shaft section";
  finding.about = {declared.names.reference(cut.feature)};
  finding.found = {{"before", millimetres(cut.before.outer_mm)},
                   {"after", millimetres(cut.after.outer_mm)},
                   {"begins", millimetres(cut.begins_mm)},
                   {"length", millimetres(cut.stretch.length())}};
  for (const CutGroove& groove : cut.grooves) {
    finding.found.push_back({"groove", millimetres(groove.diameter_mm)});
  }
  if (cut.round.bore_mm > 0.0) {
    finding.found.push_back({"bore", millimetres(cut.round.bore_mm)});
  }
  finding.found.push_back(
      {"polar_modulus_before", cubic_millimetres(polar_modulus_mm3(cut.before))});
  finding.found.push_back({"polar_modulus", cubic_millimetres(polar_modulus_mm3(cut.least))});
  finding.found.push_back({"strength_left", percent(100.0 * strength_left(cut.before, cut.least))});
  add_corner(finding.found, cut);
  add_keyseat(finding.found, cut);
  if (cut.cut->mate_corner && cut.fillet_mm) {
    finding.wanted.push_back({"mate_corner_least", millimetres(*cut.fillet_mm)});
    finding.margin.push_back({"mate_corner", millimetres(corner_over_fillet_mm(
                                                 cut.cut->mate_corner->in_mm(), *cut.fillet_mm))});
  }
  add_stress(finding, declared, cut);
  const Verdict verdict = verdict_on_cut(declared, cut);
  finding.outcome = verdict.outcome;
  finding.advice = verdict.advice;
  finding.basis = cut_basis(cut);
  finding.caution = said::kCutCaution;
  return finding;
}

}  // namespace

std::vector<Finding> cut_findings(const WorkedGroup& worked) {
  std::vector<Finding> findings;
  for (const ShaftCut& cut : shaft_cuts(worked.declared)) {
    findings.push_back(judge_cut(worked.declared, cut));
  }
  return findings;
}

}  // namespace spotblue
