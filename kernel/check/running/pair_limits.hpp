#pragma once
// What the materials of two parts that run on each other bear.

#include <string>

#include "group/match/declared.hpp"
#include "spotblue/standards/bearing_materials.hpp"

namespace spotblue {

/// What a pair bears, or why that is not known.
struct PairLimits {
  BearingLimits limits;
  std::string basis;  ///< "bronze: Mott, table 16-1; its journal is steel"
  Saying unknown;     ///< why there are none: "no material is given for Wheel"; empty when known
  std::string note;   ///< what other tables print
};
[[nodiscard]] PairLimits pair_limits(const DeclaredJob& declared, OccurrenceId a, OccurrenceId b);
/// The materials' limits as a basis says them.
[[nodiscard]] Saying limits_told(const PairLimits& pair);

}  // namespace spotblue
