#pragma once
// What a screw or nut holds beside the part it is screwed to.

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/group/joint.hpp"

namespace spotblue {

/// Parts that lie in a chain of touching faces or cones between the two parts of a thread, each
/// with the part that is screwed on: the screw closes the loop.
void add_clamp_joints(const DeclaredJob& declared, std::vector<Joint>& joints);

/// Parts with the shaft in their bore that a screw from the side reaches.
void add_side_screw_joints(const DeclaredJob& declared, std::vector<Joint>& joints);

}  // namespace spotblue
