#pragma once
// Which faces rub under end thrust.

#include <vector>

#include "group/turning/turns.hpp"
#include "spotblue/group/turning.hpp"

namespace spotblue {

/// Faces of two bodies one of which turns against the other, that the end play may close: within
/// 2 mm, not wanted apart, and not kept apart by other faces that stop the two first. Where these
/// do as drawn and lengths of the parts may still make up for it, perhaps.
[[nodiscard]] std::vector<ThrustFace> find_thrust_faces(const DeclaredJob& declared,
                                                        const Groups& groups, const Turns& turns);

}  // namespace spotblue
