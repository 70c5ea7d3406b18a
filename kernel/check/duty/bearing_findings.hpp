#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// Each bearing of the group: clearance, proportions, pressure and speed.
[[nodiscard]] std::vector<Finding> bearing_findings(const WorkedGroup& worked);

}  // namespace spotblue
