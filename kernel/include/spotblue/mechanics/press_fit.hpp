#pragma once
/// @file
/// A press or shrink fit at one interference: pressure, stresses, force to press, hold, and how the
/// parts change size.
///
/// Two thick rings in plane stress (thick_ring.hpp) that share one diameter:
///   pressure = interference / (diameter * (hub per-pressure growth + inner per-pressure closing)),
/// as in DIN 7190-1 and any machine-design text. A joint whose walls change along its length is cut
/// into stretches, each taken as if alone; the force is their sum, the stress that of the worst.
/// Elastic only: with a utilisation above 1 pressure and hold are upper bounds. Not counted:
/// turning speed, edges, keyways (they cut hold and raise stress), creep.

#include <optional>
#include <vector>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/base/words.hpp"
#include "spotblue/mechanics/elastic.hpp"
#include "spotblue/mechanics/thick_ring.hpp"

namespace spotblue {

/// Share of (Rz of the hub + Rz of the inner part) that pressing flattens off the diametral
/// interference: 0.8 by DIN 7190 until 2017, 0.4 by DIN 7190-1:2017. Source: DIN 7190:2001 (0.8)
/// and DIN 7190-1:2017 (0.4), both from memory. Take the greater for what must hold and the
/// smaller for what must not yield.
inline constexpr double kGreatRoughnessLoss = 0.8;
inline constexpr double kSmallRoughnessLoss = 0.4;

/// Diametral interference left once the roughness is pressed flat; never below 0.
///
/// @param interference_mm  diametral, of the sizes as measured; may be negative (a clearance).
/// @param rz_hub_um, rz_inner_um  peak-to-valley heights, >= 0.
/// @param loss  share lost, >= 0: one of the two above.
[[nodiscard]] SPOTBLUE_EXPORT double effective_interference_mm(double interference_mm,
                                                               double rz_hub_um, double rz_inner_um,
                                                               double loss);

struct PressStretch {
  double length_mm = 0.0;
  double hub_outside_mm = 0.0;
  double inner_bore_mm = 0.0;
};
constexpr void describe(auto& fields, const PressStretch*) {
  fields.value("PressStretch", "A length of the joint over which both walls are plain rings.")
      .member("length_mm", &PressStretch::length_mm, "mm, > 0")
      .range(kOver0)
      .member("hub_outside_mm", &PressStretch::hub_outside_mm, "diameter, mm, > the joint's")
      .range(kOver0)
      .member("inner_bore_mm", &PressStretch::inner_bore_mm, "< the joint's diameter; 0 is solid")
      .range(kFrom0);
}

struct PressFit {
  double joint_mm = 0.0;
  double interference_mm = 0.0;
  Elastic hub, inner;
  double friction_least = 0.08, friction_greatest = 0.2;
  std::vector<PressStretch> stretches;
};
constexpr void describe(auto& fields, const PressFit*) {
  fields.value("PressFit", "A press or shrink fit at one interference.")
      .member("joint_mm", &PressFit::joint_mm, "nominal diameter, mm, > 0")
      .range(kOver0)
      .member("interference_mm", &PressFit::interference_mm, "effective, diametral, mm, 0 or more")
      .range(kFrom0)
      .member("hub", &PressFit::hub, "elastic values of the hub")
      .member("inner", &PressFit::inner, "elastic values of the inner part")
      .member("friction_least", &PressFit::friction_least, "of the joint, 0 < least <= greatest")
      .range(kOver0)
      .member("friction_greatest", &PressFit::friction_greatest,
              "of the joint, 0 < least <= greatest")
      .range(kOver0)
      .member("stretches", &PressFit::stretches, "at least one; set the whole list");
}

enum class PressSurface { hub_bore, hub_outside, inner_outside, inner_bore };
constexpr auto describe(const PressSurface*) {
  return words("The four surfaces that can give way.", "hub bore", "hub outside", "inner outside",
               "inner bore");
}

struct StretchState {
  double pressure_mpa = 0.0;
  RingState hub, inner;
};
constexpr void describe(auto& fields, const StretchState*) {
  fields.value("StretchState", "One stretch of a pressed joint.")
      .member("pressure_mpa", &StretchState::pressure_mpa, "MPa")
      .member("hub", &StretchState::hub, "stresses of the hub, MPa")
      .member("inner", &StretchState::inner, "stresses of the inner part, MPa");
}

struct Governing {
  PressSurface surface = PressSurface::hub_bore;
  SurfaceStress stress;
  std::optional<double> utilisation;
};
constexpr void describe(auto& fields, const Governing*) {
  fields.value("Governing", "The surface of one part that is nearest to giving way.")
      .member("surface", &Governing::surface, "which one")
      .member("stress", &Governing::stress, "MPa")
      .member("utilisation", &Governing::utilisation, "1 at the limit; None: strength not known");
}

struct PressState {
  std::vector<StretchState> stretches;
  double least_pressure_mpa = 0.0, greatest_pressure_mpa = 0.0;
  Governing hub, inner;
  double force_to_press_n = 0.0;
  double axial_hold_n = 0.0;
  double holding_torque_nm = 0.0;
  double bore_close_in_mm = 0.0;
  double hub_growth_mm = 0.0;
};
constexpr void describe(auto& fields, const PressState*) {
  fields.value("PressState", "What a press fit does to its parts.")
      .member("stretches", &PressState::stretches, "as given")
      .member("least_pressure_mpa", &PressState::least_pressure_mpa, "MPa")
      .member("greatest_pressure_mpa", &PressState::greatest_pressure_mpa, "MPa")
      .member("hub", &PressState::hub, "its worst surface")
      .member("inner", &PressState::inner, "its worst surface")
      .member("force_to_press_n", &PressState::force_to_press_n,
              "with the greatest friction, at the end of the stroke")
      .member("axial_hold_n", &PressState::axial_hold_n, "N, with the least friction")
      .member("holding_torque_nm", &PressState::holding_torque_nm, "N m, with the least friction")
      .member("bore_close_in_mm", &PressState::bore_close_in_mm,
              "inner part's bore, diametral, the greatest; 0 when solid")
      .member("hub_growth_mm", &PressState::hub_growth_mm,
              "hub's outside, diametral, the greatest");
}

/// @throws Error bad_input naming the argument that is out of range.
[[nodiscard]] SPOTBLUE_EXPORT PressState press_fit(const PressFit& fit);

}  // namespace spotblue
