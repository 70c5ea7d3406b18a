#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each wanted size, and one for each measured size that no fit and no want uses.
[[nodiscard]] std::vector<Finding> size_findings(const DeclaredJob& declared);

}  // namespace spotblue
