#pragma once
/// @file
/// What the teeth of two gears that mesh have in common, in the normal and the transverse plane,
/// and the circles of one gear. External involute gears, spur and helical.

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"

namespace spotblue {

inline constexpr NumberRange kPressureAngles_deg{5.0, 45.0};
inline constexpr NumberRange kHelixAngles_deg{0.0, 60.0};

struct ToothForm {
  double module_mm = 0.0;
  double pressure_angle_deg = 20.0;
  double helix_angle_deg = 0.0;
};
constexpr void describe(auto& fields, const ToothForm*) {
  fields.value("ToothForm", "The basic rack of both gears, in the normal plane.")
      .member("module_mm", &ToothForm::module_mm, "normal module, mm, > 0")
      .range(kOver0)
      .member("pressure_angle_deg", &ToothForm::pressure_angle_deg, "normal, 5 to 45 degrees")
      .range(kPressureAngles_deg)
      .member("helix_angle_deg", &ToothForm::helix_angle_deg,
              "on the reference circle, 0 (spur) to 60, hand aside")
      .range(kHelixAngles_deg);
}

/// A form by its normal diametral pitch, teeth per inch of diameter: module = 25.4 mm / pitch.
/// @throws Error bad_input naming the argument out of range.
[[nodiscard]] SPOTBLUE_EXPORT ToothForm form_of_diametral_pitch(double per_inch,
                                                                double pressure_angle_deg = 20.0,
                                                                double helix_angle_deg = 0.0);

struct TransverseForm {
  double module_mm = 0.0;
  double pressure_angle_rad = 0.0;
  double base_helix_rad = 0.0;
};
constexpr void describe(auto& fields, const TransverseForm*) {
  fields.value("TransverseForm", "The same teeth seen square to the axis.")
      .member("module_mm", &TransverseForm::module_mm, "m_n / cos(helix)")
      .member("pressure_angle_rad", &TransverseForm::pressure_angle_rad,
              "tan = tan(alpha_n) / cos(helix)")
      .member("base_helix_rad", &TransverseForm::base_helix_rad, "sin = sin(helix) cos(alpha_n)");
}

/// @throws Error bad_input when the form breaks a range.
/// Source: ISO 21771:2007, 4 (from memory). Spur gears come out unchanged.
[[nodiscard]] SPOTBLUE_EXPORT TransverseForm transverse_form(const ToothForm& form);

struct GearCircles {
  double reference_mm = 0.0;
  double base_mm = 0.0;
  double tip_mm = 0.0;
  double root_mm = 0.0;
};
constexpr void describe(auto& fields, const GearCircles*) {
  fields.value("GearCircles", "Diameters of one gear, mm.")
      .member("reference_mm", &GearCircles::reference_mm, "z m_t")
      .member("base_mm", &GearCircles::base_mm, "reference x cos(alpha_t)")
      .member("tip_mm", &GearCircles::tip_mm, "reference + 2 m_n (1 + x)")
      .member("root_mm", &GearCircles::root_mm, "reference - 2 m_n (1.25 - x)");
}

/// @param teeth  >= 5.
/// @param shift  profile shift coefficient x, by default none; no tip is shortened.
/// @throws Error bad_input.
/// Source: basic rack of ISO 53:1998 profile A, addendum 1 and dedendum 1.25 module (from
/// memory). Old gears may differ: measure tip and root where it matters.
[[nodiscard]] SPOTBLUE_EXPORT GearCircles gear_circles(const ToothForm& form, int teeth,
                                                       double shift = 0.0);

/// @throws Error bad_input naming `argument` unless 5 <= teeth <= 100 000.
SPOTBLUE_EXPORT void require_teeth(int teeth, const char* argument);

}  // namespace spotblue
