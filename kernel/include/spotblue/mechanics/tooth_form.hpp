#pragma once
/// @file
/// What the teeth of two gears that mesh have in common, in the normal and the transverse plane,
/// and the circles of one gear. External involute gears, spur and helical.

#include "spotblue/base/export.hpp"

namespace spotblue {

/// The basic rack of both gears, in the normal plane.
struct ToothForm {
  double module_mm = 0.0;            ///< normal module, > 0
  double pressure_angle_deg = 20.0;  ///< normal, 5 to 45
  double helix_angle_deg = 0.0;      ///< on the reference circle, 0 (spur) to 60, hand aside
};

/// A form by its normal diametral pitch, teeth per inch of diameter: module = 25.4 mm / pitch.
/// @throws Error bad_input unless the pitch is > 0.
[[nodiscard]] SPOTBLUE_EXPORT ToothForm form_of_diametral_pitch(double per_inch,
                                                                double pressure_angle_deg = 20.0,
                                                                double helix_angle_deg = 0.0);

/// The same teeth seen square to the axis.
struct TransverseForm {
  double module_mm = 0.0;           ///< m_n / cos(helix)
  double pressure_angle_rad = 0.0;  ///< tan = tan(alpha_n) / cos(helix)
  double base_helix_rad = 0.0;      ///< sin = sin(helix) cos(alpha_n)
};

/// @throws Error bad_input when the form breaks a range.
/// Source: ISO 21771:2007, 4 (from memory). Spur gears come out unchanged.
[[nodiscard]] SPOTBLUE_EXPORT TransverseForm transverse_form(const ToothForm& form);

/// Diameters of one gear, mm.
struct GearCircles {
  double reference_mm = 0.0;  ///< z m_t
  double base_mm = 0.0;       ///< reference x cos(alpha_t)
  double tip_mm = 0.0;        ///< reference + 2 m_n (1 + x)
  double root_mm = 0.0;       ///< reference - 2 m_n (1.25 - x)
};

/// @param teeth  >= 5.
/// @param shift  profile shift coefficient x, by default none; no tip is shortened.
/// @throws Error bad_input.
/// Source: basic rack of ISO 53:1998 profile A, addendum 1 and dedendum 1.25 module (from
/// memory). Old gears may differ: measure tip and root where it matters.
[[nodiscard]] SPOTBLUE_EXPORT GearCircles gear_circles(const ToothForm& form, int teeth,
                                                       double shift = 0.0);

/// @throws Error bad_input naming `argument` unless teeth >= 5.
SPOTBLUE_EXPORT void require_teeth(int teeth, const char* argument);

}  // namespace spotblue
