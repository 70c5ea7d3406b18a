#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each thread.
[[nodiscard]] std::vector<Finding> thread_findings(const WorkedGroup& worked);

}  // namespace spotblue
