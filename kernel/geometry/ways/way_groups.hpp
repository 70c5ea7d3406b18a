#pragma once
/// @file
/// What leaves together: centre lines and the parts on them.

#include <vector>

#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue::proof {

/// Centre lines and occurrences that are looked at together; the main line first.
struct WayGroup {
  std::vector<CentreLineId> lines;
  std::vector<OccurrenceId> parts;  ///< ascending
  /// Stand in one another along another direction.
  std::vector<OccurrencePair> together;
};

[[nodiscard]] std::vector<WayGroup> way_groups(const Model& model, const Seats& seats);

}  // namespace spotblue::proof
