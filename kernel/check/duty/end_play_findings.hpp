#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each wanted end play, and one for each group of parts that can move between its stops.
[[nodiscard]] std::vector<Finding> end_play_findings(const WorkedGroup& worked);

}  // namespace spotblue
