#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each radial seat that is pressed or may come out so.
[[nodiscard]] std::vector<Finding> press_findings(const WorkedGroup& worked);

}  // namespace spotblue
