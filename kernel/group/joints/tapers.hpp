#pragma once
// Which cones bear on each other, and which hold by that alone.

#include <cstddef>
#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/group/joint.hpp"

namespace spotblue {

/// Whether two cones bear on each other as modelled: square to their surface the same place to
/// rounding, or within the gap that is wanted of them. Two chamfers, short and steep, never do: a
/// chamfer is there to keep off.
[[nodiscard]] bool taper_touches(const DeclaredJob& declared, std::size_t taper_seat);

/// Cones that bear on each other.
void add_taper_joints(const DeclaredJob& declared, std::vector<Joint>& joints);

}  // namespace spotblue
