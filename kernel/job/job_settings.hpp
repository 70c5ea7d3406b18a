#pragma once
// How the look is taken, as a job file says it; what is wrong without the model is refused.

#include "job/toml_table.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

/// `default_uncertainty`, every SeatSettings by its name, and the bounds of the read.
[[nodiscard]] JobSettings read_settings(const TomlTable& top, LengthUnit unit);

}  // namespace spotblue
