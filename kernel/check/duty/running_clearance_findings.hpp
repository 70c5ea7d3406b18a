#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each clearance fit that is wanted of two bodies and whose sizes pressing or running
/// temperature moves: what clearance is left when it runs.
[[nodiscard]] std::vector<Finding> running_clearance_findings(const WorkedGroup& worked);

}  // namespace spotblue
