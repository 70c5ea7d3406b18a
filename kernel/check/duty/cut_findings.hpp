#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each journal that a [[cuts]] entry takes down: what the shaft loses there.
[[nodiscard]] std::vector<Finding> cut_findings(const WorkedGroup& worked);

}  // namespace spotblue
