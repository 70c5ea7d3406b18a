#pragma once
// A radial seat that is pressed, or may come out so: its sizes, materials and walls, ready for the
// mechanics.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "group/joints/part_material.hpp"
#include "group/making/worked_group.hpp"
#include "group/match/roughness.hpp"
#include "spotblue/geometry/wall.hpp"
#include "spotblue/mechanics/press_fit.hpp"

namespace spotblue {

/// Part of a joint with one wall on either side; stations on the seat's axis.
struct JointStretch {
  double from = 0.0, to = 0.0;
  double hub_outside_mm = 0.0;
  double inner_bore_mm = 0.0;  ///< 0 is solid
};

struct PressCase {
  std::size_t seat = 0;
  SeatSizes sizes;
  bool must_hold = false;  ///< pressed at every limit, not a fit that may come out either way
  PartMaterial hub, inner;
  std::vector<JointStretch> stretches;
  std::vector<std::string> blind_spots;
  /// Why the two are not alone: another part is pressed on or into one of them there, and the
  /// stresses of all together are not worked out; empty where they are.
  Saying third;
  double rz_hub_um = 0.0, rz_inner_um = 0.0;
};

/// Pressed: a wanted fit with interference, or no fit wanted and interference in the sizes other
/// than by the uncertainty of measurement. A wanted clearance fit that the sizes miss is the radial
/// fit's to say.
[[nodiscard]] std::vector<PressCase> press_cases(const WorkedGroup& worked);

/// How long a stretch of one axis two seats share, mm; negative: how far they are apart.
[[nodiscard]] double shared_stretch(const RadialSeat& a, const RadialSeat& b);

/// Which end of the possible sizes.
enum class FitEnd { tightest, middle, loosest };

/// Diametral interference of the sizes at that end; negative is clearance.
[[nodiscard]] double interference_mm(const PressCase& pressed, FitEnd end);

/// Share of the roughness lost there: the small one where it may yield, the great where it may
/// slip.
[[nodiscard]] double roughness_loss(FitEnd end);

/// The interference left once roughness is pressed flat, never below 0.
[[nodiscard]] double effective_mm(const PressCase& pressed, FitEnd end);

/// Reasons why the mechanics can not be asked; empty when they can.
[[nodiscard]] Saying not_computable(const DeclaredJob& declared, const PressCase& pressed);

/// The fit at that end as the mechanics take it; materials and stretches must be known.
[[nodiscard]] PressFit press_fit_at(const DeclaredJob& declared, const PressCase& pressed,
                                    FitEnd end);

/// The same at the tightest with both parts as stiff as metal beyond the joint's ends may make
/// them: what is pressed the hardest.
[[nodiscard]] PressFit stiffest_press_fit(const DeclaredJob& declared, const PressCase& pressed);

/// What the mechanics say at that end; materials and stretches must be known.
[[nodiscard]] PressState press_state(const DeclaredJob& declared, const PressCase& pressed,
                                     FitEnd end);

}  // namespace spotblue
