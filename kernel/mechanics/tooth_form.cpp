#include "spotblue/mechanics/tooth_form.hpp"

#include <fmt/format.h>

#include <cmath>
#include <string>

#include "mechanics/require.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

constexpr int kFewestTeeth = 5;

void require_within(double value, double least, double most, const std::string& argument) {
  if (!(value >= least) || !(value <= most)) {
    throw Error(ErrorCode::bad_input, {"", argument},
                fmt::format("need {} to {} degrees, got {}", least, most, value),
                "check the angle");
  }
}

}  // namespace

void require_teeth(int teeth, const char* argument) {
  if (teeth < kFewestTeeth) {
    throw Error(ErrorCode::bad_input, {"", argument},
                fmt::format("need {} teeth or more, got {}", kFewestTeeth, teeth),
                "count the teeth");
  }
}

ToothForm form_of_diametral_pitch(double per_inch, double pressure_angle_deg,
                                  double helix_angle_deg) {
  require_positive(per_inch, "per_inch", "1/in");
  return {25.4 / per_inch, pressure_angle_deg, helix_angle_deg};
}

TransverseForm transverse_form(const ToothForm& form) {
  require_positive(form.module_mm, "form.module_mm", "mm");
  require_within(form.pressure_angle_deg, 5.0, 45.0, "form.pressure_angle_deg");
  require_within(form.helix_angle_deg, 0.0, 60.0, "form.helix_angle_deg");
  const double normal = form.pressure_angle_deg * kDegree;
  const double helix = form.helix_angle_deg * kDegree;
  return {form.module_mm / std::cos(helix), std::atan(std::tan(normal) / std::cos(helix)),
          std::asin(std::sin(helix) * std::cos(normal))};
}

GearCircles gear_circles(const ToothForm& form, int teeth, double shift) {
  require_teeth(teeth, "teeth");
  require_finite(shift, "shift", "modules");
  const TransverseForm transverse = transverse_form(form);
  GearCircles circles;
  circles.reference_mm = teeth * transverse.module_mm;
  circles.base_mm = circles.reference_mm * std::cos(transverse.pressure_angle_rad);
  circles.tip_mm = circles.reference_mm + 2.0 * form.module_mm * (1.0 + shift);
  circles.root_mm = circles.reference_mm - 2.0 * form.module_mm * (1.25 - shift);
  return circles;
}

}  // namespace spotblue
