#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// One for each [[cuts]] entry that names an outside: what the shaft loses.
[[nodiscard]] std::vector<Finding> cut_findings(const WorkedGroup& worked);

/// The diameter of a shaft or bore as it is now.
/// @throws Error bad_input where a job made in code leaves it out.
[[nodiscard]] Length size_before(const Job& job, const Cut& cut);

}  // namespace spotblue
