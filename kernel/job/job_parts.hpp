#pragma once
// What is known of the parts and their materials, as a job file says it; what is wrong without the
// model is refused.

#include <vector>

#include "job/toml_table.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

[[nodiscard]] std::vector<JobPart> read_parts(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<OwnMaterial> read_materials(const TomlTable& top);

}  // namespace spotblue
