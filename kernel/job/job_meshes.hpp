#pragma once
// Gears that run together, as a job file says it; what is wrong without the model is refused.

#include <vector>

#include "job/toml_table.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

[[nodiscard]] std::vector<Mesh> read_meshes(const TomlTable& top, LengthUnit unit);

}  // namespace spotblue
