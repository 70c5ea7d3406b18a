#pragma once
// What one plan takes: parts, stock, cuts, presses.

#include "spotblue/check/compare.hpp"

namespace spotblue {

/// @throws Error bad_input naming job file and line for a cut that names no feature.
[[nodiscard]] PlanCost cost_of(const CheckResult& plan);

}  // namespace spotblue
