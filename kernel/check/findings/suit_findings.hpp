#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// The limits that sizes still to be made must hold now, and wants that contradict each other.
[[nodiscard]] std::vector<Finding> suit_findings(const DeclaredJob& declared);

}  // namespace spotblue
