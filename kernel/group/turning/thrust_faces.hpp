#pragma once
// Which faces rub under end thrust.

#include <vector>

#include "group/turning/turns.hpp"
#include "spotblue/group/turning.hpp"

namespace spotblue {

/// Faces of two bodies one of which turns against the other, that the end play may close as drawn:
/// within 2 mm, not wanted apart. Perhaps where other faces stop the two first as drawn; what their
/// lengths say of it, faces_that_meet knows.
[[nodiscard]] std::vector<ThrustFace> find_thrust_faces(const DeclaredJob& declared,
                                                        const Groups& groups, const Turns& turns);

}  // namespace spotblue
