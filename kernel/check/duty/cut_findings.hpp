#pragma once

#include <vector>

#include "check/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each [[cuts]] entry that names an outside: what the shaft loses.
[[nodiscard]] std::vector<Finding> cut_findings(const DeclaredJob& declared);

}  // namespace spotblue
