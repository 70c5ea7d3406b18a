#pragma once
// How sizes are said, in the job's unit.

#include <string>

#include "spotblue/base/length.hpp"
#include "spotblue/base/unit.hpp"

namespace spotblue {

/// "0.012 mm"; enough decimals for a micrometre.
[[nodiscard]] std::string length_text(Length length, LengthUnit unit);
/// "44.043 to 44.059 mm".
[[nodiscard]] std::string range_text(Limits range, LengthUnit unit);

}  // namespace spotblue
