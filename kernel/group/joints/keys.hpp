#pragma once
// What a key or a tongue holds.

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/group/joint.hpp"

namespace spotblue {

/// A key with each part whose slot it lies in; a tongue of one part with the part of its slot.
void add_key_joints(const DeclaredJob& declared, std::vector<Joint>& joints);

}  // namespace spotblue
