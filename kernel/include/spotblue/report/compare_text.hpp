#pragma once
/// @file
/// Plans side by side as text for a terminal.

#include <span>
#include <string>

#include "spotblue/base/export.hpp"
#include "spotblue/check/check.hpp"
#include "spotblue/check/compare.hpp"
#include "spotblue/report/text.hpp"

namespace spotblue {

/// Each finding that differs from plan to plan or does not conform, a row with outcome and margin
/// for each plan; then what each plan takes; the last line says which one stands and what would
/// change that.
/// @param plans  those the comparison was made of, in the same order.
[[nodiscard]] SPOTBLUE_EXPORT std::string compare_text(const Comparison& comparison,
                                                       std::span<const CheckResult> plans,
                                                       const TextStyle& style);

}  // namespace spotblue
