#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each axial seat.
[[nodiscard]] std::vector<Finding> axial_findings(const DeclaredJob& declared);

}  // namespace spotblue
