#pragma once
/// @file
/// Numbers with their dimension, in the units that a metric or an inch shop reads.

#include <string>
#include <string_view>

#include "spotblue/base/dimension.hpp"
#include "spotblue/base/unit.hpp"

namespace spotblue {

/// As a table shows it, without the unit.
[[nodiscard]] std::string measure_cell(const Measure& measure, LengthUnit unit);
/// "mm", "lbf in", "deg F"; empty for a plain number.
[[nodiscard]] std::string_view unit_of(Dimension dimension, LengthUnit unit);
/// As a sentence says it: "12.3 kN", "0.012 mm", "64 deg F".
[[nodiscard]] std::string measure_text(const Measure& measure, LengthUnit unit);

}  // namespace spotblue
