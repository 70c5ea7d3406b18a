#pragma once
/// @file
/// Strength of a round shaft's section, solid or hollow, against torsion and bending, and what is
/// left of it after a cut.

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"

namespace spotblue {

struct RoundSection {
  double outer_mm = 0.0;
  double inner_mm = 0.0;
};
constexpr void describe(auto& fields, const RoundSection*) {
  fields.value("RoundSection", "A round section, mm; 0 <= inner < outer.")
      .member("outer_mm", &RoundSection::outer_mm, "diameter, mm, > inner")
      .range(kOver0)
      .member("inner_mm", &RoundSection::inner_mm, "diameter, mm; 0 when solid")
      .range(kFrom0);
}

/// pi (D^4 - d^4) / (32 D), mm3. @throws Error bad_input for an impossible section.
[[nodiscard]] SPOTBLUE_EXPORT double bending_modulus_mm3(const RoundSection& section);
/// pi (D^4 - d^4) / (16 D), mm3.
[[nodiscard]] SPOTBLUE_EXPORT double polar_modulus_mm3(const RoundSection& section);
/// pi (D^4 - d^4) / 32, mm4.
[[nodiscard]] SPOTBLUE_EXPORT double polar_moment_mm4(const RoundSection& section);

struct NominalStress {
  double torsion_mpa = 0.0;
  double bending_mpa = 0.0;
};
constexpr void describe(auto& fields, const NominalStress*) {
  fields.value("NominalStress", "Greatest nominal stresses in a section, MPa, >= 0.")
      .member("torsion_mpa", &NominalStress::torsion_mpa, "shear, T / polar modulus")
      .member("bending_mpa", &NominalStress::bending_mpa, "M / bending modulus");
}

/// @param torque_nm, bending_nm  whichever way, N m; the sign is dropped.
/// @throws Error bad_input. Source: elementary theory of torsion and bending; elastic, straight.
/// Checked by: tests/mechanics/shaft_section_test.cpp.
[[nodiscard]] SPOTBLUE_EXPORT NominalStress nominal_stress(const RoundSection& section,
                                                           double torque_nm, double bending_nm);

/// sqrt(bending^2 + 3 torsion^2): distortion energy.
[[nodiscard]] SPOTBLUE_EXPORT double equivalent_mpa(const NominalStress& stress);

/// Torque, or bending moment, that the new section bears for each unit that the old one bore at the
/// same stress: (d/D)^3 for solid shafts. Both moduli have the same ratio.
[[nodiscard]] SPOTBLUE_EXPORT double strength_left(const RoundSection& before,
                                                   const RoundSection& after);

/// Whether a part pushed against a shoulder reaches it, or rides up on the fillet: its corner (a
/// radius, or a chamfer of 45 degrees by its leg) must be no smaller than the fillet.
/// @return corner - fillet, mm: negative when it fouls. Both >= 0, else Error bad_input.
/// Source: geometry of two arcs in a corner, worked here; bearing makers ask for the same.
[[nodiscard]] SPOTBLUE_EXPORT double corner_over_fillet_mm(double corner_mm, double fillet_mm);

}  // namespace spotblue
