#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each pair of gears of a [[meshes]] entry.
[[nodiscard]] std::vector<Finding> mesh_findings(const DeclaredJob& declared);

}  // namespace spotblue
