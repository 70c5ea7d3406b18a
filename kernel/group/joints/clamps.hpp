#pragma once
// What a screw or nut holds beside the part it is screwed to.

#include <vector>

#include "group/joints/groups.hpp"

namespace spotblue {

/// Parts that lie in a chain of touching faces or cones between the two parts of a thread, each
/// joined to the part that is screwed on.
[[nodiscard]] std::vector<Hold> clamp_holds(const DeclaredJob& declared);

/// Parts held to a shaft in their bore by a screw from the side.
[[nodiscard]] std::vector<Hold> side_screw_holds(const DeclaredJob& declared);

}  // namespace spotblue
