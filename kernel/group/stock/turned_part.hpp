#pragma once
// A part as it would be turned out of a piece of stock.

#include <optional>
#include <vector>

#include "group/match/declared.hpp"
#include "group/rings/surface_sizes.hpp"
#include "spotblue/mechanics/stock.hpp"

namespace spotblue {

/// Where the sizes of a part are known from.
struct WorkedSizes {
  const DeclaredJob& declared;
  const std::vector<SurfaceSizes>& surfaces;  ///< by radial seat
};

/// About the axis of its largest whole outside cylinder, at the greatest sizes that it may have;
/// its bore, where one is open right through, at the least.
struct TurnedPart {
  RoundPart size;
  bool measured_whole = true;  ///< false: a free-form face was left out
};

/// Nothing for a part without an outside that goes round.
[[nodiscard]] std::optional<TurnedPart> turned_part(const WorkedSizes& sizes, OccurrenceId part);

}  // namespace spotblue
