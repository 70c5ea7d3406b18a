#pragma once
/// @file
/// What the parts of a judged job do to each other, as text for a terminal.

#include <string>

#include "spotblue/base/export.hpp"
#include "spotblue/check/check.hpp"
#include "spotblue/report/text.hpp"

namespace spotblue {

/// What is one body and what turns; then each surface of a radial seat with its size as made, after
/// pressing, and running, or why a state is not known.
[[nodiscard]] SPOTBLUE_EXPORT std::string group_text(const CheckResult& result,
                                                     const TextStyle& style);

}  // namespace spotblue
