#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each taper seat.
[[nodiscard]] std::vector<Finding> taper_findings(const DeclaredJob& declared);

}  // namespace spotblue
