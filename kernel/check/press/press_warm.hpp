#pragma once
// What becomes of a press fit when it runs warm.

#include "check/fits/reasons.hpp"
#include "check/press/press_case.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// Adds the warm interference, and for a bush of greater expansion the temperatures from which it
/// yields and comes back loose; judges them at the running temperature.
void judge_warm_press(Finding& finding, Reasons& reasons, const DeclaredJob& declared,
                      const PressCase& pressed);

}  // namespace spotblue
