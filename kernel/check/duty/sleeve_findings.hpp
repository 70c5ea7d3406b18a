#pragma once

#include <vector>

#include "group/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each seat that runs in the bore of a pressed part: the clearance that pressing leaves.
[[nodiscard]] std::vector<Finding> sleeve_findings(const DeclaredJob& declared);

}  // namespace spotblue
