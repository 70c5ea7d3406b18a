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
#include <string_view>
#include <vector>

#include "spotblue/base/export.hpp"
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

/// A length of the joint over which both walls are plain rings.
struct PressStretch {
  double length_mm = 0.0;       ///< > 0
  double hub_outside_mm = 0.0;  ///< > the joint's diameter
  double inner_bore_mm = 0.0;   ///< < the joint's diameter; 0 is solid
};

struct PressFit {
  double joint_mm = 0.0;         ///< nominal diameter, > 0
  double interference_mm = 0.0;  ///< effective, diametral, >= 0
  Elastic hub, inner;
  double friction_least = 0.08, friction_greatest = 0.2;  ///< of the joint, 0 < least <= greatest
  std::vector<PressStretch> stretches;                    ///< at least one
};

enum class PressSurface { hub_bore, hub_outside, inner_outside, inner_bore };
/// "the hub's bore".
[[nodiscard]] SPOTBLUE_EXPORT std::string_view press_surface_text(PressSurface surface);

struct StretchState {
  double pressure_mpa = 0.0;
  RingState hub, inner;
};

/// The surface of one part that is nearest to giving way.
struct Governing {
  PressSurface surface = PressSurface::hub_bore;
  SurfaceStress stress;
  std::optional<double> utilisation;  ///< nothing where the strength is not known
};

struct PressState {
  std::vector<StretchState> stretches;  ///< as given
  double least_pressure_mpa = 0.0, greatest_pressure_mpa = 0.0;
  Governing hub, inner;
  double force_to_press_n = 0.0;   ///< with the greatest friction, at the end of the stroke
  double axial_hold_n = 0.0;       ///< with the least friction
  double holding_torque_nm = 0.0;  ///< with the least friction
  double bore_close_in_mm = 0.0;   ///< inner part's bore, diametral, the greatest; 0 when solid
  double hub_growth_mm = 0.0;      ///< hub's outside, diametral, the greatest
};

/// @throws Error bad_input naming the argument that is out of range.
[[nodiscard]] SPOTBLUE_EXPORT PressState press_fit(const PressFit& fit);

}  // namespace spotblue
