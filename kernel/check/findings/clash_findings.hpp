#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each clash.
[[nodiscard]] std::vector<Finding> clash_findings(const WorkedGroup& worked);

}  // namespace spotblue
