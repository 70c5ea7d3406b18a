#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each foul.
[[nodiscard]] std::vector<Finding> foul_findings(const WorkedGroup& worked);

}  // namespace spotblue
