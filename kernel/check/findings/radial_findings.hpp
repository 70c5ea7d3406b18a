#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each radial seat.
[[nodiscard]] std::vector<Finding> radial_findings(const DeclaredJob& declared);

}  // namespace spotblue
