#pragma once
// The finding on a piece of stock that several parts are cut from.

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

[[nodiscard]] Finding judge_shared_stock(const WorkedGroup& worked, const SharedStock& stock);

}  // namespace spotblue
