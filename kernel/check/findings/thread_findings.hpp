#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each thread.
[[nodiscard]] std::vector<Finding> thread_findings(const DeclaredJob& declared);

}  // namespace spotblue
