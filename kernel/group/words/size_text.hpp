#pragma once
// How sizes and places in the job are said, in the job's unit.

#include <optional>
#include <string>

#include "spotblue/base/length.hpp"
#include "spotblue/base/unit.hpp"

namespace spotblue {

/// "0.012 mm"; enough decimals for a micrometre.
[[nodiscard]] std::string length_text(Length length, LengthUnit unit);
/// "44.043 to 44.059 mm".
[[nodiscard]] std::string range_text(Limits range, LengthUnit unit);
/// " (job file, line 12)"; empty for jobs made in code.
[[nodiscard]] std::string from_line(std::optional<int> line);

}  // namespace spotblue
