#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// Seats with clearance whose parts turn against each other, by what is declared in [[turning]].
[[nodiscard]] std::vector<Finding> bearing_findings(const DeclaredJob& declared);

}  // namespace spotblue
