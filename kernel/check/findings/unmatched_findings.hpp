#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// Fits, wants and allowances that matched nothing in the model.
[[nodiscard]] std::vector<Finding> unmatched_findings(const WorkedGroup& worked);

}  // namespace spotblue
