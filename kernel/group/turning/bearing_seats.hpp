#pragma once
// Which seats carry a body that turns.

#include <optional>
#include <vector>

#include "group/rings/surface_sizes.hpp"
#include "group/turning/reach.hpp"
#include "group/turning/rubbing.hpp"

namespace spotblue {

struct BearingSeat {
  std::size_t seat = 0;
  Rubbing rub;
  std::size_t body = 0;         ///< of Groups::turns_with, that it carries
  OccurrenceId carried{};       ///< the part of that body
  OccurrenceId carrying{};      ///< the other
  bool wanted = false;          ///< a fit is wanted
  Limits clearance{};           ///< as the two meet once everything is pressed
  double from = 0.0, to = 0.0;  ///< on the centre line
  bool reached = true;          ///< at all sizes; false: at some only
};

/// @param surfaces  by radial seat.
[[nodiscard]] std::vector<BearingSeat> find_bearing_seats(
    const DeclaredJob& declared, const Groups& groups, const Turns& turns,
    const std::vector<SurfaceSizes>& surfaces);

}  // namespace spotblue
