#include "check/duty/cut_findings.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <utility>

#include "check/duty/cut_surroundings.hpp"
#include "check/fits/fit_verdict.hpp"
#include "group/sizes/size_range.hpp"
#include "group/words/said_cut.hpp"
#include "group/words/size_text.hpp"
#include "spotblue/mechanics/shaft_section.hpp"
#include "spotblue/mechanics/stress_concentration.hpp"
#include "spotblue/standards/materials.hpp"

namespace spotblue {
namespace {

// The worst corner's stress against yield at which a shaft passes; common practice, no source.
constexpr double kOfYieldAllowed = 0.5;
// A shoulder nearer a keyseat than this part of the diameter adds to its stress; common practice,
// no source.
constexpr double kKeyseatNear = 0.1;
// The sharpest corners that the published curves cover, step over fillet.
constexpr double kSharpestBending = 20.0;
constexpr double kSharpestTorsion = 4.0;

// The worst factors of all shoulders, 1 without one; `unknown` says why one is absent.
struct CornerFactor {
  std::optional<double> bending = 1.0, torsion = 1.0;
  bool sharp = false;  // a corner without a fillet: the factors are the least it can have
  Saying unknown;
};

struct CutCase {
  const Cut* cut = nullptr;
  FeatureRef feature;
  RoundSection before, after;
  CutSurroundings round;
  std::optional<double> fillet_mm;  // left in the new corner: the job's, else the model's
  CornerFactor corner;
};

struct Strength {
  double mpa = 0.0;
  Saying text;  // "yield of carbon steel 1045"
};

std::optional<Strength> strength_of(const DeclaredJob& declared, OccurrenceId occurrence) {
  const JobPart* part = declared.parts.at(occurrence);
  if (part == nullptr || part->material.empty()) {
    return std::nullopt;
  }
  const auto chosen = [](const std::optional<double>& yield, const std::optional<double>& tensile,
                         const std::string& name) -> std::optional<Strength> {
    if (yield) {
      return Strength{*yield, say(said::kYieldOf, name)};
    }
    return tensile ? std::optional(Strength{*tensile, say(said::kTensileOf, name)}) : std::nullopt;
  };
  for (const OwnMaterial& own : declared.job->materials) {
    if (own.name == part->material) {
      return chosen(own.yield_mpa, own.tensile_mpa, own.name);
    }
  }
  const Material* known = find_material(part->material);
  return known == nullptr
             ? std::nullopt
             : chosen(known->yield_mpa, known->tensile_strength_mpa, std::string(known->name));
}

CornerFactor corner_of(const CutCase& cut) {
  CornerFactor worst;
  const double after = cut.after.outer_mm;
  for (const Shoulder& shoulder : cut.round.shoulders) {
    const double height = 0.5 * (shoulder.diameter_mm - after);
    const double fillet = cut.fillet_mm.value_or(0.0);
    worst.sharp = worst.sharp || fillet <= 0.0;
    const auto take = [&](std::optional<double>& factor, ShaftLoad load, double sharpest) {
      const double radius = fillet > 0.0 ? fillet : height / sharpest;
      const StressFactor found = shoulder_factor({shoulder.diameter_mm, after, radius}, load);
      if (!found.factor) {
        worst.unknown = say(said::kCornerNotKnown, found.reason);
      }
      factor =
          factor && found.factor ? std::optional(std::max(*factor, *found.factor)) : std::nullopt;
    };
    take(worst.bending, ShaftLoad::bending, kSharpestBending);
    take(worst.torsion, ShaftLoad::torsion, kSharpestTorsion);
  }
  return worst;
}

// A bore opened or a face taken back costs a shaft's section nothing; plans count that metal.
bool is_outside(const Model& model, const FeatureRef& feature) {
  const Product& product = model.products.at(model.occurrences.at(feature.occurrence).product);
  return feature.kind == FeatureKind::cylinder &&
         product.cylinders.at(feature.index).side == Side::external;
}

CutCase case_of(const DeclaredJob& declared, const Cut& cut, const FeatureRef& feature) {
  const Model& model = declared.look->model;
  const Product& product = model.products.at(model.occurrences.at(feature.occurrence).product);
  const double modelled = product.cylinders[feature.index].diameter;
  const double after =
      size_range(declared, feature, Length::mm(modelled), std::nullopt).centre.in_mm();
  const Length before = size_before(*declared.job, cut);
  if (after >= before.in_mm()) {
    throw Error(ErrorCode::bad_input, entry_place(*declared.job, "cuts", cut.line),
                fmt::format("before the cut {} is not more than the {} that is left",
                            length_text(before, declared.job->unit),
                            length_text(Length::mm(after), declared.job->unit)),
                "the model shows the shaft after the cut; correct \"before\"");
  }
  CutCase found{&cut, feature, {}, {}, cut_surroundings(declared, feature), {}, {}};
  const double bore = std::min(found.round.bore_mm, 0.999 * after);
  found.before = {before.in_mm(), bore};
  found.after = {after, bore};
  if (cut.fillet) {
    found.fillet_mm = cut.fillet->in_mm();
  } else {
    for (const Shoulder& shoulder : found.round.shoulders) {
      // The sharper of two modelled corners counts.
      found.fillet_mm = found.fillet_mm ? std::min(*found.fillet_mm, shoulder.fillet_mm.value_or(0))
                                        : shoulder.fillet_mm.value_or(0.0);
    }
  }
  found.corner = corner_of(found);
  return found;
}

double peak_of(const CutCase& cut, const NominalStress& nominal) {
  return equivalent_mpa({cut.corner.torsion.value_or(1.0) * nominal.torsion_mpa,
                         cut.corner.bending.value_or(1.0) * nominal.bending_mpa});
}

// A new corner so near a keyseat that their stresses add up.
bool near_keyseat(const CutCase& cut) {
  return !cut.round.keyseats.empty() && !cut.round.shoulders.empty() &&
         cut.round.keyseats.front().distance_mm >= 0.0 &&
         cut.round.keyseats.front().distance_mm < kKeyseatNear * cut.after.outer_mm;
}

Verdict verdict_on_surroundings(const CutCase& cut) {
  Verdict verdict;
  const Length depth = Length::mm(0.5 * (cut.before.outer_mm - cut.after.outer_mm));
  for (const NearKeyseat& keyseat : cut.round.keyseats) {
    if (keyseat.distance_mm < 0.0) {
      verdict =
          worse(verdict, {Outcome::nonconforming, say(said::kCutIntoKeyseat, keyseat.name, depth)});
    }
  }
  if (near_keyseat(cut)) {
    const NearKeyseat& keyseat = cut.round.keyseats.front();
    verdict =
        worse(verdict, {Outcome::undecided,
                        say(said::kCutNearKeyseat, Length::mm(keyseat.distance_mm), keyseat.name) +
                            said::kStopOff});
  }
  for (const Saying& thread : cut.round.threads) {
    verdict = worse(verdict, {Outcome::nonconforming, say(said::kCutIntoThread, thread)});
  }
  if (cut.cut->mate_corner && cut.fillet_mm) {
    const double room = corner_over_fillet_mm(cut.cut->mate_corner->in_mm(), *cut.fillet_mm);
    if (room < -1e-9) {
      verdict = worse(
          verdict, {Outcome::nonconforming, say(said::kMateRidesUp, Length::mm(*cut.fillet_mm))});
    }
  }
  return verdict;
}

Saying left_of(const CutCase& cut) {
  return say(said::kStrengthLeft, Figure{100.0 * strength_left(cut.before, cut.after), 1});
}

Verdict verdict_on_corner(const CutCase& cut) {
  if (cut.round.shoulders.empty()) {
    return {};
  }
  if (cut.corner.sharp) {
    double height = 0.0;
    for (const Shoulder& shoulder : cut.round.shoulders) {
      height = std::max(height, 0.5 * (shoulder.diameter_mm - cut.after.outer_mm));
    }
    return {Outcome::undecided, say(said::kSharpCorner, Length::mm(height / kSharpestTorsion))};
  }
  return cut.corner.unknown.empty() ? Verdict{} : Verdict{Outcome::undecided, cut.corner.unknown};
}

Verdict verdict_on_load(const DeclaredJob& declared, const CutCase& cut) {
  if (!cut.cut->torque_nm || !cut.cut->bending_nm) {
    return {Outcome::undecided, left_of(cut) + said::kGiveLoad};
  }
  const auto strength = strength_of(declared, cut.feature.occurrence);
  if (!strength) {
    return {Outcome::undecided, left_of(cut) + said::kSayMaterial};
  }
  const NominalStress nominal =
      nominal_stress(cut.after, *cut.cut->torque_nm, *cut.cut->bending_nm);
  const double peak = peak_of(cut, nominal);
  if (equivalent_mpa(nominal) > strength->mpa) {
    return {Outcome::nonconforming,
            say(said::kOverYield, megapascals(equivalent_mpa(nominal)), strength->text)};
  }
  const bool corner = !cut.round.shoulders.empty();
  if (peak > kOfYieldAllowed * strength->mpa) {
    return {Outcome::undecided, say(corner ? said::kOverHalfInCorner : said::kOverHalfOnSkin,
                                    megapascals(peak), strength->text)};
  }
  return {
      Outcome::conforming,
      left_of(cut) + say(corner ? said::kStressInCorner : said::kStressOnSkin, megapascals(peak))};
}

Saying keyseat_remark(const CutCase& cut) {
  if (cut.round.keyseats.empty() || cut.round.keyseats.front().distance_mm < 0.0 ||
      near_keyseat(cut)) {
    return {};
  }
  const NearKeyseat& nearest = cut.round.keyseats.front();
  return say(said::kFromKeyseat, Length::mm(nearest.distance_mm), nearest.name);
}

void add_corner(std::vector<Quantity>& found, const CutCase& cut) {
  for (const Shoulder& shoulder : cut.round.shoulders) {
    found.push_back({"shoulder", millimetres(shoulder.diameter_mm)});
  }
  if (cut.round.shoulders.empty()) {
    return;
  }
  found.push_back({"fillet", millimetres(cut.fillet_mm.value_or(0.0))});
  const std::string corner = cut.corner.sharp ? "sharpest_corner_" : "corner_";
  const double left = 100.0 * strength_left(cut.before, cut.after);
  if (cut.corner.bending) {
    found.push_back({corner + "bending_kt", plain_number(*cut.corner.bending)});
    found.push_back({"bending_left_in_corner", percent(left / *cut.corner.bending)});
  }
  if (cut.corner.torsion) {
    found.push_back({corner + "torsion_kt", plain_number(*cut.corner.torsion)});
    found.push_back({"torsion_left_in_corner", percent(left / *cut.corner.torsion)});
  }
}

void add_keyseat(std::vector<Quantity>& found, const CutCase& cut) {
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

void add_stress(Finding& finding, const DeclaredJob& declared, const CutCase& cut) {
  const Cut& job = *cut.cut;
  if (!job.torque_nm && !job.bending_nm) {
    return;
  }
  const double torque = job.torque_nm.value_or(0.0);
  const double bending = job.bending_nm.value_or(0.0);
  const NominalStress was = nominal_stress(cut.before, torque, bending);
  const NominalStress is = nominal_stress(cut.after, torque, bending);
  finding.found.push_back({"torsion_before", megapascals(was.torsion_mpa)});
  finding.found.push_back({"torsion", megapascals(is.torsion_mpa)});
  finding.found.push_back({"bending_before", megapascals(was.bending_mpa)});
  finding.found.push_back({"bending", megapascals(is.bending_mpa)});
  const double peak = peak_of(cut, is);
  finding.found.push_back({"greatest_stress", megapascals(peak)});
  if (const auto strength = strength_of(declared, cut.feature.occurrence)) {
    finding.wanted.push_back({"greatest_stress", megapascals(kOfYieldAllowed * strength->mpa)});
    finding.margin.push_back(
        {"greatest_stress", megapascals(kOfYieldAllowed * strength->mpa - peak)});
  }
}

Saying cut_basis() {
  const auto keyseat = [](ShaftLoad load) {
    return first_pass_factor(ShaftNotch::end_milled_keyseat, load).factor.value();
  };
  return Saying(said::kRoundShaft) +
         say(said::kCornerCurves, Figure{keyseat(ShaftLoad::bending), 2},
             Figure{keyseat(ShaftLoad::torsion), 1}) +
         said::kHalfOfYield + said::kNoFatigue;
}

Finding judge_cut(const DeclaredJob& declared, const CutCase& cut) {
  Finding finding;
  finding.kind = "shaft section";
  finding.about = {declared.names.reference(cut.feature)};
  finding.found = {{"before", millimetres(cut.before.outer_mm)},
                   {"after", millimetres(cut.after.outer_mm)},
                   {"length", millimetres(cut.round.length_mm)}};
  if (cut.round.bore_mm > 0.0) {
    finding.found.push_back({"bore", millimetres(cut.round.bore_mm)});
  }
  finding.found.push_back(
      {"polar_modulus_before", cubic_millimetres(polar_modulus_mm3(cut.before))});
  finding.found.push_back({"polar_modulus", cubic_millimetres(polar_modulus_mm3(cut.after))});
  finding.found.push_back({"strength_left", percent(100.0 * strength_left(cut.before, cut.after))});
  add_corner(finding.found, cut);
  add_keyseat(finding.found, cut);
  if (cut.cut->mate_corner && cut.fillet_mm) {
    finding.wanted.push_back({"mate_corner_least", millimetres(*cut.fillet_mm)});
    finding.margin.push_back({"mate_corner", millimetres(corner_over_fillet_mm(
                                                 cut.cut->mate_corner->in_mm(), *cut.fillet_mm))});
  }
  add_stress(finding, declared, cut);
  const Verdict verdict = worse(worse(verdict_on_surroundings(cut), verdict_on_corner(cut)),
                                verdict_on_load(declared, cut));
  finding.outcome = verdict.outcome;
  finding.advice = verdict.advice + keyseat_remark(cut);
  finding.basis = cut_basis();
  finding.caution = said::kCutCaution;
  return finding;
}

}  // namespace

Length size_before(const Job& job, const Cut& cut) {
  if (!cut.before) {
    throw Error(
        ErrorCode::bad_input, entry_place(job, "cuts", cut.line),
        fmt::format("{} is turned or bored, but its size before the cut is missing", cut.feature),
        "give \"before\", the diameter as it is now");
  }
  return *cut.before;
}

std::vector<Finding> cut_findings(const WorkedGroup& worked) {
  const DeclaredJob& declared = worked.declared;
  std::vector<Finding> findings;
  for (const Cut& cut : declared.job->cuts) {
    const NamedFeature named = declared.names.feature(cut.feature, {"cuts", "feature", cut.line});
    if (is_outside(declared.look->model, named.refs.front())) {
      findings.push_back(judge_cut(declared, case_of(declared, cut, named.refs.front())));
    }
  }
  return findings;
}

}  // namespace spotblue
