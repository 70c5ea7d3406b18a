#pragma once
// Thin rings that are sprung into a groove.

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/group/joint.hpp"

namespace spotblue {

/// A ring between two faces of one part that looks at its bottom too: it can only have been sprung
/// in, and goes with the part of the groove. A longer one is a bearing between collars.
void add_ring_joints(const DeclaredJob& declared, std::vector<Joint>& joints);

}  // namespace spotblue
