#pragma once
// The sizes a hole and its shaft may have, and the fit that is wanted of them.

#include <cstddef>
#include <optional>

#include "group/sizes/found_fit.hpp"
#include "group/sizes/wanted_fit.hpp"

namespace spotblue {

struct SeatSizes {
  std::optional<WantedFit> wanted;
  FoundFit found;
};

/// @throws Error of the standard, with the job's file and line.
[[nodiscard]] SeatSizes seat_sizes(const DeclaredJob& declared, std::size_t radial_seat);
/// The same of a slot and its key.
[[nodiscard]] SeatSizes width_seat_sizes(const DeclaredJob& declared, std::size_t width_seat);

}  // namespace spotblue
