#pragma once
// What the job and the group say of ways in, and which of them comes before which.

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/geometry/way_in.hpp"

namespace spotblue {

/// What goes in by force, gives way, comes in halves or shares metal as it stands.
[[nodiscard]] WayInOptions way_options(const WorkedGroup& worked);

/// Only moves along the line are tried: a part that neither holds the other in a bore nor is held
/// in one may come from the side.
[[nodiscard]] bool may_come_from_the_side(const Model& model, const Blockage& blockage);

/// What is shut both ways by one part is blocked by it, and the rest by what is; the tightest
/// first.
void true_blocks_first(std::vector<Blockage>& blocked);

/// Steps of ways across this one that need no more of it than what stands together here: pins go in
/// once what they pin stands.
[[nodiscard]] std::vector<const WayStep*> steps_across(const std::vector<WayIn>& ways,
                                                       const WayIn& way);

}  // namespace spotblue
