#include "group/cuts/cut_stress.hpp"

#include <string>

#include "group/words/said_cut.hpp"
#include "spotblue/mechanics/stress_concentration.hpp"
#include "spotblue/standards/materials.hpp"

namespace spotblue {

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

CutStress cut_stress(const ShaftCut& cut, double torque_nm, double bending_nm) {
  const auto peak = [](const NominalStress& nominal, double torsion, double bending) {
    return equivalent_mpa({torsion * nominal.torsion_mpa, bending * nominal.bending_mpa});
  };
  CutStress stress;
  stress.before = nominal_stress(cut.before, torque_nm, bending_nm);
  stress.after = nominal_stress(cut.least, torque_nm, bending_nm);
  stress.peak_mpa = peak(nominal_stress(cut.after, torque_nm, bending_nm),
                         cut.corner.torsion.value_or(1.0), cut.corner.bending.value_or(1.0));
  stress.place = cut.round.shoulders.empty() ? StressPlace::skin : StressPlace::corner;
  for (const CutGroove& groove : cut.grooves) {
    const auto factor = [](ShaftLoad load) {
      return *first_pass_factor(ShaftNotch::ring_groove, load).factor;
    };
    const NominalStress in_groove =
        nominal_stress({groove.diameter_mm, cut.least.inner_mm}, torque_nm, bending_nm);
    const double there = peak(in_groove, factor(ShaftLoad::torsion), factor(ShaftLoad::bending));
    if (there >= stress.peak_mpa) {
      stress.peak_mpa = there;
      stress.place = StressPlace::groove;
    }
  }
  return stress;
}

}  // namespace spotblue
