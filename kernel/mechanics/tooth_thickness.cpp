#include "spotblue/mechanics/tooth_thickness.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

#include "base/require.hpp"
#include "mechanics/require.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/mechanics/involute.hpp"

namespace spotblue {
namespace {

constexpr double kPi = std::numbers::pi;

// How far teeth stand out over the reference circle, in modules, shift aside: long ones and stub
// teeth. Common practice, no source.
constexpr double kHighestAddendum = 1.25;
constexpr double kStubAddendum = 0.8;

double normal_angle(const ToothForm& form) { return radians(form.pressure_angle_deg); }

// The size over k teeth of a gear whose teeth are of standard thickness.
double standard_span(const ToothForm& form, int teeth, int spanned) {
  const TransverseForm transverse = transverse_form(form);
  require_teeth(teeth, "teeth");
  if (spanned < 2 || 2 * spanned > teeth) {
    throw Error(
        ErrorCode::bad_input, {"", "spanned"},
        fmt::format("need 2 teeth or more and no more than half of {}, got {}", teeth, spanned),
        "span as many teeth as bear half way up their flanks");
  }
  return form.module_mm * std::cos(normal_angle(form)) *
         (kPi * (spanned - 0.5) + teeth * involute(transverse.pressure_angle_rad));
}

double possible_thickness(const ToothForm& form, double thickness_mm, const std::string& argument,
                          double measured_mm) {
  if (!(thickness_mm > 0.0) || !(thickness_mm < kPi * form.module_mm)) {
    throw Error(ErrorCode::bad_input, {"", argument},
                fmt::format("{} mm would make the tooth {:.4f} mm thick on a pitch of {:.4f} mm",
                            measured_mm, thickness_mm, kPi * form.module_mm),
                "check the number of teeth, the module and the number spanned");
  }
  return thickness_mm;
}

// What the pins' centre circle is multiplied by to give the distance across.
double across(const ToothForm& form, int teeth, Pins pins) {
  if (teeth % 2 == 0 || form.helix_angle_deg != 0.0) {
    return 1.0;
  }
  const double one = std::cos(0.5 * kPi / teeth);
  return pins == Pins::two ? one : one * one;
}

double base_diameter(const ToothForm& form, int teeth) { return gear_circles(form, teeth).base_mm; }

// The part of inv(phi) that does not depend on the tooth's thickness.
double pin_term(const ToothForm& form, int teeth, double pin_mm) {
  return pin_mm / (teeth * form.module_mm * std::cos(normal_angle(form))) - kPi / teeth +
         involute(transverse_form(form).pressure_angle_rad);
}

[[noreturn]] void refuse_pin(double pin_mm) {
  throw Error(ErrorCode::bad_input, {"", "pin_mm"},
              fmt::format("a pin of {} mm does not bear on the flanks", pin_mm),
              "take a pin of about 1.7 modules");
}

// A pin whose centre is seen at pressure angle `phi` touches the flanks between the base circle and
// the tips, and stands out over the tips.
void require_touch(const ToothForm& form, int teeth, double pin_mm, double thickness_mm,
                   double phi) {
  const GearCircles circles = gear_circles(form, teeth);
  const double base = 0.5 * circles.base_mm;
  const double base_helix = transverse_form(form).base_helix_rad;
  const double along = base * std::tan(phi) - 0.5 * pin_mm / std::cos(base_helix);
  const double shift = std::max(0.0, shift_of_thickness(form, thickness_mm));
  const double reference = 0.5 * circles.reference_mm;
  const double highest_tip = reference + form.module_mm * (kHighestAddendum + shift);
  const double lowest_tip = reference + form.module_mm * kStubAddendum;
  const double pin_top = base / std::cos(phi) + 0.5 * pin_mm;
  if (along < 0.0 || std::hypot(base, along) > highest_tip || pin_top < lowest_tip) {
    refuse_pin(pin_mm);
  }
}

}  // namespace

double standard_thickness_mm(const ToothForm& form) {
  require_form(form);
  return 0.5 * kPi * form.module_mm;
}

double shift_of_thickness(const ToothForm& form, double thickness_mm) {
  require_form(form);
  require_tooth_thickness(form, thickness_mm, "thickness_mm");
  return (thickness_mm - standard_thickness_mm(form)) /
         (2.0 * form.module_mm * std::tan(normal_angle(form)));
}

int teeth_to_span(const ToothForm& form, int teeth) {
  require_form(form);
  require_teeth(teeth, "teeth");
  const double helix = radians(form.helix_angle_deg);
  const double straight = teeth / std::pow(std::cos(helix), 3);
  const int spanned = static_cast<int>(std::lround(straight * normal_angle(form) / kPi + 0.5));
  return std::clamp(spanned, 2, std::max(2, teeth / 2));
}

double span_mm(const ToothForm& form, int teeth, int spanned, double thickness_mm) {
  require_form(form);
  require_tooth_thickness(form, thickness_mm, "thickness_mm");
  return standard_span(form, teeth, spanned) +
         (thickness_mm - standard_thickness_mm(form)) * std::cos(normal_angle(form));
}

double thickness_from_span_mm(const ToothForm& form, int teeth, int spanned, double span_mm) {
  require_positive(span_mm, "span_mm", "mm");
  const double thickness =
      standard_thickness_mm(form) +
      (span_mm - standard_span(form, teeth, spanned)) / std::cos(normal_angle(form));
  return possible_thickness(form, thickness, "span_mm", span_mm);
}

double over_pins_mm(const ToothForm& form, int teeth, double pin_mm, double thickness_mm,
                    Pins pins) {
  require_positive(pin_mm, "pin_mm", "mm");
  require_form(form);
  require_tooth_thickness(form, thickness_mm, "thickness_mm");
  const double base = base_diameter(form, teeth);
  const double value = pin_term(form, teeth, pin_mm) + thickness_mm / (teeth * form.module_mm);
  if (!(value > 0.0)) {
    refuse_pin(pin_mm);
  }
  const double phi = involute_inverse(value);
  require_touch(form, teeth, pin_mm, thickness_mm, phi);
  return base / std::cos(phi) * across(form, teeth, pins) + pin_mm;
}

double thickness_from_pins_mm(const ToothForm& form, int teeth, double pin_mm, double over_mm,
                              Pins pins) {
  require_positive(pin_mm, "pin_mm", "mm");
  require_positive(over_mm, "over_mm", "mm");
  const double base = base_diameter(form, teeth);
  const double centres = (over_mm - pin_mm) / across(form, teeth, pins);
  if (!(centres > base)) {
    refuse_pin(pin_mm);
  }
  const double phi = std::acos(base / centres);
  const double thickness = possible_thickness(
      form, (involute(phi) - pin_term(form, teeth, pin_mm)) * teeth * form.module_mm, "over_mm",
      over_mm);
  require_touch(form, teeth, pin_mm, thickness, phi);
  return thickness;
}

}  // namespace spotblue
