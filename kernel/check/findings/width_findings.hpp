#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each width seat.
[[nodiscard]] std::vector<Finding> width_findings(const DeclaredJob& declared);

}  // namespace spotblue
