#pragma once
/// @file
/// Two external involute gears, spur or helical on parallel axes, at the centre distance they
/// really have: pressure angle, contact, backlash and clearance. Lengths in mm, angles in rad.

#include <optional>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/mechanics/tooth_form.hpp"

namespace spotblue {

struct MeshedGear {
  int teeth = 0;
  double thickness_mm = 0.0;
  double tip_mm = 0.0;
  double root_mm = 0.0;
};
constexpr void describe(auto& fields, const MeshedGear*) {
  fields.value("MeshedGear", "One gear of a mesh.")
      .member("teeth", &MeshedGear::teeth, "5 or more")
      .member("thickness_mm", &MeshedGear::thickness_mm,
              "of a tooth on the reference circle, normal plane, > 0")
      .range(kOver0)
      .member("tip_mm", &MeshedGear::tip_mm, "diameter, mm, > root")
      .range(kOver0)
      .member("root_mm", &MeshedGear::root_mm, "diameter, mm, > 0")
      .range(kOver0);
}

/// A gear with the tip and root of the basic rack at this tooth thickness; unshifted circles, since
/// a tooth thinned for backlash keeps its blank.
[[nodiscard]] SPOTBLUE_EXPORT MeshedGear standard_gear(const ToothForm& form, int teeth,
                                                       double thickness_mm);

struct GearMesh {
  double reference_centre_mm = 0.0;
  double working_angle_rad = 0.0;
  double working_a_mm = 0.0, working_b_mm = 0.0;
  double path_mm = 0.0;
  double contact_ratio = 0.0;
  double overlap_ratio = 0.0;
  double backlash_mm = 0.0;
  double normal_backlash_mm = 0.0;
  double backlash_per_centre = 0.0;
  std::optional<double> tight_centre_mm;
  double tip_clearance_a_mm = 0.0;
  double tip_clearance_b_mm = 0.0;
  double past_base_of_b_mm = 0.0;
  double past_base_of_a_mm = 0.0;
};
constexpr void describe(auto& fields, const GearMesh*) {
  fields.value("GearMesh", "What is true of a pair of gears at one centre distance.")
      .member("reference_centre_mm", &GearMesh::reference_centre_mm,
              "at which the reference circles touch")
      .member("working_angle_rad", &GearMesh::working_angle_rad, "transverse, rad")
      .member("working_a_mm", &GearMesh::working_a_mm, "diameter of a's working circle, mm")
      .member("working_b_mm", &GearMesh::working_b_mm, "diameter of b's working circle, mm")
      .member("path_mm", &GearMesh::path_mm,
              "length of the path of contact; negative: they do not reach")
      .member("contact_ratio", &GearMesh::contact_ratio, "transverse, path / base pitch")
      .member("overlap_ratio", &GearMesh::overlap_ratio, "by the helix; 0 for spur gears")
      .member("backlash_mm", &GearMesh::backlash_mm,
              "on the working circle, transverse; negative: they bind")
      .member("normal_backlash_mm", &GearMesh::normal_backlash_mm,
              "square to the flanks: what a feeler shows")
      .member("backlash_per_centre", &GearMesh::backlash_per_centre,
              "exact derivative of backlash_mm by centre distance")
      .member("tight_centre_mm", &GearMesh::tight_centre_mm,
              "centre distance at which there is no backlash; absent when the teeth are too thin "
              "for one")
      .member("tip_clearance_a_mm", &GearMesh::tip_clearance_a_mm,
              "a's tips from b's roots, radial")
      .member("tip_clearance_b_mm", &GearMesh::tip_clearance_b_mm, "b's tips from a's roots, mm")
      .member("past_base_of_b_mm", &GearMesh::past_base_of_b_mm,
              "how far a's tip reaches along the line of action past the point where it touches "
              "b's base circle, where b has no involute to meet it; > 0: the teeth interfere or "
              "need undercut")
      .member("past_base_of_a_mm", &GearMesh::past_base_of_a_mm, "b's tip past a's base point, mm");
}

/// The sum of the base radii: a centre distance must be greater.
[[nodiscard]] SPOTBLUE_EXPORT double least_centre_mm(const ToothForm& form, int teeth_a,
                                                     int teeth_b);

/// @param centre_mm  distance of the two axes, > least_centre_mm.
/// @param face_mm    length over which the two faces overlap, >= 0; only for overlap_ratio.
/// @throws Error bad_input naming the argument.
///
/// Formulas, with transverse values t, a0 the reference centre and s the transverse thicknesses:
///   cos(aw) = a0 cos(at) / a
///   backlash = (a/a0) (p - s1 - s2) + 2 a (inv(aw) - inv(at)); its derivative by a is
///     (p - s1 - s2)/a0 + 2 (inv(aw) - inv(at)) + 2 tan(aw)
///   normal backlash = backlash cos(aw) cos(base helix)
///   path = sqrt(ra1^2 - rb1^2) + sqrt(ra2^2 - rb2^2) - a sin(aw)
///   overlap ratio = face sin(helix) / (pi m_n)
/// Source: ISO 21771:2007, 5 (from memory); the derivative worked here.
/// True teeth: pitch error, runout and bent shafts take from the backlash what no formula here
/// knows. Turn the pair by hand through a whole turn of the wheel.
/// Checked by: tests/mechanics/gear_mesh_test.cpp.
[[nodiscard]] SPOTBLUE_EXPORT GearMesh gear_mesh(const ToothForm& form, const MeshedGear& a,
                                                 const MeshedGear& b, double centre_mm,
                                                 double face_mm);

/// Fewest teeth that a rack of the form cuts without undercut, unshifted: 2 cos(helix) /
/// sin^2(alpha_t); not a whole number (17.097 for 20 degree spur).
[[nodiscard]] SPOTBLUE_EXPORT double undercut_below_teeth(const ToothForm& form);

struct LeastBacklash {
  double iso_mm = 0.0;
  double agma_mm = 0.0;
};
constexpr void describe(auto& fields, const LeastBacklash*) {
  fields.value("LeastBacklash", "Least backlash recommended, square to the flanks, mm.")
      .member("iso_mm", &LeastBacklash::iso_mm,
              "(2/3) (0.06 + 0.0005 a + 0.03 m_n): ISO/TR 10064-2 annex A, industrial drives in "
              "ferrous housings below 15 m/s at the pitch line. From memory.")
      .member("agma_mm", &LeastBacklash::agma_mm,
              "0.06 + 0.0005 a + 0.03 m_n: the form of AGMA 2002-B88. From memory.");
}
/// @throws Error bad_input unless both are > 0.
[[nodiscard]] SPOTBLUE_EXPORT LeastBacklash least_backlash(double module_mm, double centre_mm);

}  // namespace spotblue
