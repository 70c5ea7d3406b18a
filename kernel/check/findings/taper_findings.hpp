#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each taper seat.
[[nodiscard]] std::vector<Finding> taper_findings(const WorkedGroup& worked);

}  // namespace spotblue
