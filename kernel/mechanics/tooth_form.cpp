#include "spotblue/mechanics/tooth_form.hpp"

#include <fmt/format.h>

#include <cmath>
#include <numbers>
#include <string>

#include "base/require.hpp"
#include "mechanics/require.hpp"
#include "spotblue/base/angle.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

constexpr int kFewestTeeth = 5;

constexpr int kMostTeeth = 100'000;  // choice of this program, no source

}  // namespace

void require_form(const ToothForm& form) { require_value(form, "form"); }

void require_tooth_thickness(const ToothForm& form, double thickness_mm,
                             const std::string& argument) {
  require_positive(thickness_mm, argument, "mm");
  const double pitch = std::numbers::pi * form.module_mm;
  if (!(thickness_mm < pitch)) {
    throw Error(ErrorCode::bad_input, {"", argument},
                fmt::format("need less than the pitch of {:.4f} mm, got {} mm: no space is left "
                            "for a tooth of the other gear",
                            pitch, thickness_mm),
                "check the module and the thickness");
  }
}

void require_teeth(int teeth, const char* argument) {
  if (teeth < kFewestTeeth || teeth > kMostTeeth) {
    throw Error(ErrorCode::bad_input, {"", argument},
                fmt::format("need {} teeth or more and no more than {}, got {}", kFewestTeeth,
                            kMostTeeth, teeth),
                "count the teeth");
  }
}

ToothForm form_of_diametral_pitch(double per_inch, double pressure_angle_deg,
                                  double helix_angle_deg) {
  require_positive(per_inch, "per_inch", "1/in");
  require_in_range(pressure_angle_deg, kPressureAngles_deg, {nullptr, "pressure_angle_deg"});
  require_in_range(helix_angle_deg, kHelixAngles_deg, {nullptr, "helix_angle_deg"});
  return {25.4 / per_inch, pressure_angle_deg, helix_angle_deg};
}

TransverseForm transverse_form(const ToothForm& form) {
  require_form(form);
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
