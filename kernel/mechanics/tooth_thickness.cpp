#include "spotblue/mechanics/tooth_thickness.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

#include "mechanics/require.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/mechanics/involute.hpp"

namespace spotblue {
namespace {

constexpr double kPi = std::numbers::pi;

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

}  // namespace

double standard_thickness_mm(const ToothForm& form) {
  require_positive(form.module_mm, "form.module_mm", "mm");
  return 0.5 * kPi * form.module_mm;
}

double shift_of_thickness(const ToothForm& form, double thickness_mm) {
  require_positive(thickness_mm, "thickness_mm", "mm");
  return (thickness_mm - standard_thickness_mm(form)) /
         (2.0 * form.module_mm * std::tan(normal_angle(form)));
}

int teeth_to_span(const ToothForm& form, int teeth) {
  require_teeth(teeth, "teeth");
  const double helix = radians(form.helix_angle_deg);
  const double straight = teeth / std::pow(std::cos(helix), 3);
  const int spanned = static_cast<int>(std::lround(straight * normal_angle(form) / kPi + 0.5));
  return std::clamp(spanned, 2, std::max(2, teeth / 2));
}

double span_mm(const ToothForm& form, int teeth, int spanned, double thickness_mm) {
  require_positive(thickness_mm, "thickness_mm", "mm");
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
  require_positive(thickness_mm, "thickness_mm", "mm");
  const double base = base_diameter(form, teeth);
  const double value = pin_term(form, teeth, pin_mm) + thickness_mm / (teeth * form.module_mm);
  if (!(value > 0.0)) {
    refuse_pin(pin_mm);
  }
  return base / std::cos(involute_inverse(value)) * across(form, teeth, pins) + pin_mm;
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
  const double value = involute(std::acos(base / centres));
  const double thickness = (value - pin_term(form, teeth, pin_mm)) * teeth * form.module_mm;
  return possible_thickness(form, thickness, "over_mm", over_mm);
}

}  // namespace spotblue
