#pragma once
// What a load does in the section that a cut leaves.

#include <optional>

#include "group/cuts/shaft_cut.hpp"

namespace spotblue {

/// The stress that a part must not reach, and which it is.
struct Strength {
  double mpa = 0.0;
  Saying text;  ///< "yield of carbon steel 1045"
};
/// Nothing where no material, or no strength of it, is known.
[[nodiscard]] std::optional<Strength> strength_of(const DeclaredJob& declared,
                                                  OccurrenceId occurrence);

/// Where the greatest stress is.
enum class StressPlace { skin, corner, groove };

struct CutStress {
  NominalStress before;  ///< in the section as it was
  NominalStress after;   ///< in the least section that is left
  double peak_mpa = 0.0;
  StressPlace place = StressPlace::skin;
};
/// Corners by their factors; grooves by first-pass factors of a ring groove.
[[nodiscard]] CutStress cut_stress(const ShaftCut& cut, double torque_nm, double bending_nm);

}  // namespace spotblue
