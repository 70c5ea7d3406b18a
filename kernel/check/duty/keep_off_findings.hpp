#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each [[keep_off]].
[[nodiscard]] std::vector<Finding> keep_off_findings(const WorkedGroup& worked);

}  // namespace spotblue
