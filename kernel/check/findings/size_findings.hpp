#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each wanted size, and one for each measured size that no fit and no want uses.
[[nodiscard]] std::vector<Finding> size_findings(const WorkedGroup& worked);

}  // namespace spotblue
