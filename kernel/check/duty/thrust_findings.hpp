#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// Faces that rub under end thrust.
[[nodiscard]] std::vector<Finding> thrust_findings(const WorkedGroup& worked);

}  // namespace spotblue
