#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// Seats with clearance whose parts turn against each other, by what is declared in [[turning]].
[[nodiscard]] std::vector<Finding> bearing_findings(const WorkedGroup& worked);

}  // namespace spotblue
