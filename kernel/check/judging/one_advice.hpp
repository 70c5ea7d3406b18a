#pragma once
// One feature, one advice: where several findings tell the sizes that a feature is to be made to,
// they tell those of the plan that suits all that is wanted of it.

#include <vector>

#include "spotblue/check/finding.hpp"

namespace spotblue {

/// Puts the window of "make to suit" where a fit by itself would have told one that shares no size
/// with it. Where no size
/// suits all, each tells its own and the contradiction is a finding.
void tell_one_window(std::vector<Finding>& findings);

}  // namespace spotblue
