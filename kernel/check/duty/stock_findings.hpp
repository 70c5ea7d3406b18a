#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each part to make that has stock.
[[nodiscard]] std::vector<Finding> stock_findings(const DeclaredJob& declared);

}  // namespace spotblue
