#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// Faces that rub under end thrust.
[[nodiscard]] std::vector<Finding> thrust_findings(const DeclaredJob& declared);

}  // namespace spotblue
