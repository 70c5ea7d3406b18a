#pragma once
// Where two parts come nearest to each other, by Open CASCADE's least distance of their solids.

#include <optional>
#include <span>
#include <string>

#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/seats.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

struct LeastDistance {
  OccurrenceId a{}, b{};
  std::optional<double> gap;  ///< mm; 0 where they touch or share space; none where not found
  Point at_a, at_b;           ///< assembly's frame
  std::string why;            ///< one line, where it was not found
};

/// Along the axis on which two boxes stand farthest apart, mm; negative where they overlap.
[[nodiscard]] double boxes_apart(const Box& a, const Box& b);

/// Of the pairs the one that comes nearest, in a contained child within the limits.
/// @return nothing for no pairs and for a model without solids; no gap where the child did not
///         find it for a pair that may be the nearest.
[[nodiscard]] std::optional<LeastDistance> least_distance(const Model& model,
                                                          std::span<const OccurrencePair> pairs,
                                                          const ReadLimits& limits);

}  // namespace spotblue
