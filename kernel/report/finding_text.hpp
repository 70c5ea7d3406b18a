#pragma once
/// @file
/// One judged finding as text: what it is about, its numbers in a table, and the reasons.

#include <string>
#include <string_view>

#include "spotblue/base/unit.hpp"
#include "spotblue/check/finding.hpp"

namespace spotblue {

/// Wanted, found and margin side by side, a row for each quantity.
[[nodiscard]] std::string quantities_text(const Finding& finding, LengthUnit unit,
                                          std::size_t indent, std::size_t width);

/// The first margin with its unit, "0.0230 mm"; empty when the finding has none.
[[nodiscard]] std::string margin_text(const Finding& finding, LengthUnit unit);

/// Equal for findings that differ only in where in the assembly they are.
[[nodiscard]] std::string alike_key(const Finding& finding);

}  // namespace spotblue
