#pragma once
// What makes a turned part of a mock-up impossible.

#include "geometry/mockup/mockup_check.hpp"

namespace spotblue {

/// @throws Error bad_input naming the step.
void check_turned(const MockupPlace& place, const TurnedPart& part);

}  // namespace spotblue
