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

/// All clearances of a hole and a shaft of these sizes, mm.
[[nodiscard]] Limits clearance_between(Interval hole, Interval shaft);
/// All clearances that the two may have once everything is pressed; of the sizes they are made to
/// where what pressing does is not known.
[[nodiscard]] Limits assembled_clearance(const SurfaceSizes& surface);
/// Why that is not known: "no material is given for Bush"; empty where it is.
[[nodiscard]] Saying why_not_assembled(const SurfaceSizes& surface);

}  // namespace spotblue
