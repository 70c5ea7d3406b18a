#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// The limits that sizes still to be made must hold now, and wants that contradict each other.
[[nodiscard]] std::vector<Finding> suit_findings(const WorkedGroup& worked);

}  // namespace spotblue
