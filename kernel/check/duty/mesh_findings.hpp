#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each pair of gears of a [[meshes]] entry.
[[nodiscard]] std::vector<Finding> mesh_findings(const WorkedGroup& worked);

}  // namespace spotblue
