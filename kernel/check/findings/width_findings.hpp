#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each width seat.
[[nodiscard]] std::vector<Finding> width_findings(const WorkedGroup& worked);

}  // namespace spotblue
