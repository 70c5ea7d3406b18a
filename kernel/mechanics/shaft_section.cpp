#include "spotblue/mechanics/shaft_section.hpp"

#include <fmt/format.h>

#include <cmath>
#include <numbers>

#include "base/require.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

constexpr double kNmmPerNm = 1000.0;

void require_section(const RoundSection& section, const std::string& argument = "section") {
  require_value(section, argument);
  if (section.inner_mm >= section.outer_mm) {
    throw Error(ErrorCode::bad_input, {"", argument + ".inner_mm"},
                fmt::format("need less than the outside of {} mm, got {} mm", section.outer_mm,
                            section.inner_mm),
                "swap or correct the two diameters");
  }
}

}  // namespace

double polar_moment_mm4(const RoundSection& section) {
  require_section(section);
  return std::numbers::pi / 32.0 * (std::pow(section.outer_mm, 4) - std::pow(section.inner_mm, 4));
}

double polar_modulus_mm3(const RoundSection& section) {
  return 2.0 * polar_moment_mm4(section) / section.outer_mm;
}

double bending_modulus_mm3(const RoundSection& section) { return 0.5 * polar_modulus_mm3(section); }

NominalStress nominal_stress(const RoundSection& section, double torque_nm, double bending_nm) {
  require_finite(torque_nm, "torque_nm", "N m");
  require_finite(bending_nm, "bending_nm", "N m");
  return {std::abs(torque_nm) * kNmmPerNm / polar_modulus_mm3(section),
          std::abs(bending_nm) * kNmmPerNm / bending_modulus_mm3(section)};
}

double equivalent_mpa(const NominalStress& stress) {
  require_value(stress, "stress");
  return std::sqrt(stress.bending_mpa * stress.bending_mpa +
                   3.0 * stress.torsion_mpa * stress.torsion_mpa);
}

double strength_left(const RoundSection& before, const RoundSection& after) {
  require_section(before, "before");
  require_section(after, "after");
  return polar_modulus_mm3(after) / polar_modulus_mm3(before);
}

double corner_over_fillet_mm(double corner_mm, double fillet_mm) {
  require_not_negative(corner_mm, "corner_mm", "mm");
  require_not_negative(fillet_mm, "fillet_mm", "mm");
  return corner_mm - fillet_mm;
}

}  // namespace spotblue
