#pragma once
/// @file
/// Two external involute gears, spur or helical on parallel axes, at the centre distance they
/// really have: pressure angle, contact, backlash and clearance. Lengths in mm, angles in rad.

#include <optional>

#include "spotblue/base/export.hpp"
#include "spotblue/mechanics/tooth_form.hpp"

namespace spotblue {

/// One gear of a mesh.
struct MeshedGear {
  int teeth = 0;              ///< >= 5
  double thickness_mm = 0.0;  ///< of a tooth on the reference circle, normal plane, > 0
  double tip_mm = 0.0;        ///< diameter, > root
  double root_mm = 0.0;       ///< diameter, > 0
};

/// A gear with the tip and root of the basic rack at this tooth thickness; unshifted circles, since
/// a tooth thinned for backlash keeps its blank.
[[nodiscard]] SPOTBLUE_EXPORT MeshedGear standard_gear(const ToothForm& form, int teeth,
                                                       double thickness_mm);

/// What is true of a pair at one centre distance.
struct GearMesh {
  double reference_centre_mm = 0.0;               ///< at which the reference circles touch
  double working_angle_rad = 0.0;                 ///< transverse
  double working_a_mm = 0.0, working_b_mm = 0.0;  ///< diameters of the working circles
  double path_mm = 0.0;              ///< length of the path of contact; negative: they do not reach
  double contact_ratio = 0.0;        ///< transverse, path / base pitch
  double overlap_ratio = 0.0;        ///< by the helix; 0 for spur gears
  double backlash_mm = 0.0;          ///< on the working circle, transverse; negative: they bind
  double normal_backlash_mm = 0.0;   ///< square to the flanks: what a feeler shows
  double backlash_per_centre = 0.0;  ///< exact derivative of backlash_mm by centre distance
  /// Centre distance at which there is no backlash; absent when the teeth are too thin for one.
  std::optional<double> tight_centre_mm;
  double tip_clearance_a_mm = 0.0;  ///< a's tips from b's roots, radial
  double tip_clearance_b_mm = 0.0;  ///< b's tips from a's roots
  /// How far a's tip reaches along the line of action past the point where it touches b's base
  /// circle, where b has no involute to meet it; > 0: the teeth interfere or need undercut.
  double past_base_of_b_mm = 0.0;
  double past_base_of_a_mm = 0.0;
};

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

/// Least backlash recommended, square to the flanks, mm.
struct LeastBacklash {
  /// (2/3) (0.06 + 0.0005 a + 0.03 m_n): ISO/TR 10064-2 annex A, industrial drives in ferrous
  /// housings below 15 m/s at the pitch line. From memory.
  double iso_mm = 0.0;
  /// 0.06 + 0.0005 a + 0.03 m_n: the form of AGMA 2002-B88. From memory.
  double agma_mm = 0.0;
};
/// @throws Error bad_input unless both are > 0.
[[nodiscard]] SPOTBLUE_EXPORT LeastBacklash least_backlash(double module_mm, double centre_mm);

}  // namespace spotblue
