#pragma once
// How hard two parts that run on each other work, against what they bear.

#include "check/fits/reasons.hpp"
#include "check/running/pair_limits.hpp"
#include "spotblue/check/finding.hpp"
#include "spotblue/mechanics/plain_bearing.hpp"

namespace spotblue {

[[nodiscard]] RunningDuty running_duty(Duty duty);

/// Adds pressure, speed and product to found, the limits to wanted and the room to margin, and
/// judges them; `missing_load` is the advice where a load that counts is not given.
void judge_running(Finding& finding, Reasons& reasons, const RunningLoad& load,
                   const PairLimits& pair, Duty duty, const Saying& missing_load);

}  // namespace spotblue
