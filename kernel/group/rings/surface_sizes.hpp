#pragma once
// The sizes of every radial seat in each state.

#include <vector>

#include "group/joints/pressing.hpp"
#include "group/match/declared.hpp"
#include "spotblue/group/size_states.hpp"

namespace spotblue {

struct SurfaceSizes {
  SeatSizes sizes;  ///< free
  Pressing pressing = Pressing::none;
  SizeStates hole, shaft;
};

/// By radial seat. Rings that are pressed one in another, or may be, on one centre line are solved
/// together, stretch by stretch; a seat is asked over its own length. The surfaces of a seat that
/// is itself pressed are told without the other part of it: as that part meets them.
/// @throws Error of the standards or of the names, with the job's file and line.
[[nodiscard]] std::vector<SurfaceSizes> surface_sizes(const DeclaredJob& declared);

/// Whether a seat goes far enough round to be pressed as a ring; else it is a clamp or a split
/// bore.
[[nodiscard]] bool is_whole_ring(const RadialSeat& seat);

}  // namespace spotblue
