#pragma once
// What holds for the whole job, as a job file says it; what is wrong without the model is refused.

#include "job/toml_table.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

[[nodiscard]] Conditions read_conditions(const TomlTable& top, LengthUnit unit);

}  // namespace spotblue
