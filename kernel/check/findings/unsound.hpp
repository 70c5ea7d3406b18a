#pragma once
// What is found of parts whose solids can't be relied on.

#include <vector>

#include "check/match/declared.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

// Makes each finding about such a part undecided and says why among what is found.
void leave_unsound_open(const DeclaredJob& declared, std::vector<Finding>& findings);

}  // namespace spotblue
