#pragma once

#include <vector>

#include "group/making/worked_group.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// Where each nut, collar or shim of [[adjust]] may be set so that every end play wanted holds
/// whatever the other lengths are, and the thread left at both ends. Conforming where there is
/// such a window and half the thread's diameter stays engaged all over it.
[[nodiscard]] std::vector<Finding> setting_findings(const WorkedGroup& worked);

}  // namespace spotblue
