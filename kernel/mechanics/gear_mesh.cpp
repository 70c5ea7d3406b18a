#include "spotblue/mechanics/gear_mesh.hpp"

#include <fmt/format.h>

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

void require_gear(const ToothForm& form, const MeshedGear& gear, const std::string& name) {
  require_value(gear, name);
  require_teeth(gear.teeth, (name + ".teeth").c_str());
  require_tooth_thickness(form, gear.thickness_mm, name + ".thickness_mm");
  if (!(gear.tip_mm > gear.root_mm)) {
    throw Error(
        ErrorCode::bad_input, {"", name + ".tip_mm"},
        fmt::format("need more than the root of {} mm, got {} mm", gear.root_mm, gear.tip_mm),
        "measure tip and root diameter");
  }
}

// From where the line of action touches a gear's base circle to where its tip leaves the line.
double reach(const MeshedGear& gear, double base_mm) {
  return 0.5 * std::sqrt(std::max(0.0, gear.tip_mm * gear.tip_mm - base_mm * base_mm));
}

// The parts of the pair that backlash is made of.
struct Backlash {
  double slack = 0.0;  // pitch less both thicknesses, on the reference circle
  double reference_centre = 0.0;
  double involute_reference = 0.0;
};

std::optional<double> tight_centre(const Backlash& b, double transverse_angle) {
  const double value = b.involute_reference - b.slack / (2.0 * b.reference_centre);
  if (!(value > 0.0)) {
    return std::nullopt;
  }
  return b.reference_centre * std::cos(transverse_angle) / std::cos(involute_inverse(value));
}

}  // namespace

MeshedGear standard_gear(const ToothForm& form, int teeth, double thickness_mm) {
  const GearCircles circles = gear_circles(form, teeth);
  require_tooth_thickness(form, thickness_mm, "thickness_mm");
  return {teeth, thickness_mm, circles.tip_mm, circles.root_mm};
}

double least_centre_mm(const ToothForm& form, int teeth_a, int teeth_b) {
  require_teeth(teeth_a, "teeth_a");
  require_teeth(teeth_b, "teeth_b");
  return 0.5 * (gear_circles(form, teeth_a).base_mm + gear_circles(form, teeth_b).base_mm);
}

GearMesh gear_mesh(const ToothForm& form, const MeshedGear& a, const MeshedGear& b,
                   double centre_mm, double face_mm) {
  require_form(form);
  require_gear(form, a, "a");
  require_gear(form, b, "b");
  require_not_negative(face_mm, "face_mm", "mm");
  require_positive(centre_mm, "centre_mm", "mm");
  const double least = least_centre_mm(form, a.teeth, b.teeth);
  if (!(centre_mm > least)) {
    throw Error(ErrorCode::bad_input, {"", "centre_mm"},
                fmt::format("need more than the base radii together, {:.4f} mm, got {} mm", least,
                            centre_mm),
                "check the module and the numbers of teeth");
  }
  const TransverseForm t = transverse_form(form);
  const double helix = radians(form.helix_angle_deg);
  const int teeth = a.teeth + b.teeth;
  const Backlash parts{kPi * t.module_mm - (a.thickness_mm + b.thickness_mm) / std::cos(helix),
                       0.5 * t.module_mm * teeth, involute(t.pressure_angle_rad)};
  GearMesh mesh;
  mesh.reference_centre_mm = parts.reference_centre;
  mesh.working_angle_rad = std::acos(least / centre_mm);
  mesh.working_a_mm = 2.0 * centre_mm * a.teeth / teeth;
  mesh.working_b_mm = 2.0 * centre_mm * b.teeth / teeth;
  const double line = centre_mm * std::sin(mesh.working_angle_rad);
  const double reach_a = reach(a, gear_circles(form, a.teeth).base_mm);
  const double reach_b = reach(b, gear_circles(form, b.teeth).base_mm);
  mesh.path_mm = reach_a + reach_b - line;
  mesh.contact_ratio = mesh.path_mm / (kPi * t.module_mm * std::cos(t.pressure_angle_rad));
  mesh.overlap_ratio = face_mm * std::sin(helix) / (kPi * form.module_mm);
  const double opened = involute(mesh.working_angle_rad) - parts.involute_reference;
  mesh.backlash_mm = centre_mm / parts.reference_centre * parts.slack + 2.0 * centre_mm * opened;
  mesh.normal_backlash_mm =
      mesh.backlash_mm * std::cos(mesh.working_angle_rad) * std::cos(t.base_helix_rad);
  mesh.backlash_per_centre =
      parts.slack / parts.reference_centre + 2.0 * opened + 2.0 * std::tan(mesh.working_angle_rad);
  mesh.tight_centre_mm = tight_centre(parts, t.pressure_angle_rad);
  mesh.tip_clearance_a_mm = centre_mm - 0.5 * (a.tip_mm + b.root_mm);
  mesh.tip_clearance_b_mm = centre_mm - 0.5 * (b.tip_mm + a.root_mm);
  mesh.past_base_of_b_mm = reach_a - line;
  mesh.past_base_of_a_mm = reach_b - line;
  return mesh;
}

double undercut_below_teeth(const ToothForm& form) {
  const double sine = std::sin(transverse_form(form).pressure_angle_rad);
  return 2.0 * std::cos(radians(form.helix_angle_deg)) / (sine * sine);
}

LeastBacklash least_backlash(double module_mm, double centre_mm) {
  require_positive(module_mm, "module_mm", "mm");
  require_positive(centre_mm, "centre_mm", "mm");
  const double sum = 0.06 + 0.0005 * centre_mm + 0.03 * module_mm;
  return {2.0 / 3.0 * sum, sum};
}

}  // namespace spotblue
