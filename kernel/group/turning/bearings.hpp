#pragma once
// On what each body that turns runs, and what each of its bearings carries.

#include <vector>

#include "group/rings/surface_sizes.hpp"
#include "group/turning/turns.hpp"
#include "spotblue/group/turning.hpp"

namespace spotblue {

struct Running {
  std::vector<TurningBody> bodies;  ///< in the order of their first parts
  std::vector<Bearing> bearings;    ///< in the order of the radial seats
};

/// Whether a bearing is open on one side. Oil grooves and keyseats leave a little less than all.
[[nodiscard]] bool is_open(const Bearing& bearing);

/// A bearing is a seat between two bodies one of which turns, with a clearance that is wanted or
/// found. It is none where
/// - the job allows a squeeze of the two (a seal),
/// - the clearance is more than a hundredth of the diameter: the hole lets it through,
/// - the body's other bearings keep the shaft off it at all sizes (a cover hole); at some sizes: it
///   is perhaps one, what it carries is not known, and the others are taken to carry all,
/// - no fit is wanted and a thin ring that nothing else holds would be the other part (a washer).
/// What is pinned, keyed, pressed, clamped or carried along turns as one body and has no seat here.
///
/// A body's bearings are those of its line: that with the most seats, then the largest. Off it, a
/// seat carries the load where the job says that it comes in there; else what it carries is not
/// known. Where both parts turn, the seat carries the one that runs on nothing that stands.
/// @throws Error as load_place.
[[nodiscard]] Running find_running(const DeclaredJob& declared, const Groups& groups,
                                   const Turns& turns, const std::vector<SurfaceSizes>& surfaces);

}  // namespace spotblue
