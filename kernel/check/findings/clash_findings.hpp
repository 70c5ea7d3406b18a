#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each clash.
[[nodiscard]] std::vector<Finding> clash_findings(const DeclaredJob& declared);

}  // namespace spotblue
