#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each [[keep_off]].
[[nodiscard]] std::vector<Finding> keep_off_findings(const DeclaredJob& declared);

}  // namespace spotblue
