#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each group of centre lines: an order in which its parts go together, or what blocks
/// them.
[[nodiscard]] std::vector<Finding> way_in_findings(const DeclaredJob& declared);

}  // namespace spotblue
