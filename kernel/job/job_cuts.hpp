#pragma once
// Metal that comes off parts that exist, as a job file says it; what is wrong without the model is
// refused.

#include <vector>

#include "job/toml_table.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

[[nodiscard]] std::vector<Cut> read_cuts(const TomlTable& top, LengthUnit unit);

}  // namespace spotblue
