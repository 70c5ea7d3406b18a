#pragma once
/// @file
/// A judged job as text for a terminal.

#include <string>

#include "spotblue/base/export.hpp"
#include "spotblue/check/check.hpp"
#include "spotblue/report/text.hpp"

namespace spotblue {

/// Every finding, the nonconforming first, then the undecided, then the conforming, with a summary
/// as the last line. Findings that read alike but for their place stand there once, with the ids of
/// the next few; a caution stands in full where it is first due.
[[nodiscard]] SPOTBLUE_EXPORT std::string check_text(const CheckResult& result,
                                                     const TextStyle& style);

}  // namespace spotblue
