#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each group of centre lines: an order in which its parts go together, or what blocks
/// them.
[[nodiscard]] std::vector<Finding> way_in_findings(const WorkedGroup& worked);

}  // namespace spotblue
