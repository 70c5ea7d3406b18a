#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each part to make that has stock.
[[nodiscard]] std::vector<Finding> stock_findings(const WorkedGroup& worked);

}  // namespace spotblue
