#pragma once
// What a pin or a dowel holds.

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/group/joint.hpp"

namespace spotblue {

/// Asked last: who is one body already says which part is a pin and which a shaft.
///
/// - Two parts that seat on each other on one line and have a third through holes of both on
///   another cannot turn on each other; nor move along their line where the third goes across it.
/// - A part all of whose holes are of one body, beside the line on which this has a seat at least
///   as large, is a dowel or a plug and goes with it.
/// A part that turns by what is declared, or is held to one, is a shaft and no pin.
void add_pin_joints(const DeclaredJob& declared, std::vector<Joint>& joints);

}  // namespace spotblue
