#pragma once
// What is known of the parts and their materials, as a job file says it; what is wrong without the
// model is refused.

#include <vector>

#include "job/toml_table.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

[[nodiscard]] std::vector<JobPart> read_parts(const TomlTable& top, LengthUnit unit);
/// @throws Error bad_input for a part that has stock of its own in `parts`.
[[nodiscard]] std::vector<SharedStock> read_shared_stock(const TomlTable& top, LengthUnit unit,
                                                         const std::vector<JobPart>& parts);
[[nodiscard]] std::vector<OwnMaterial> read_materials(const TomlTable& top);

}  // namespace spotblue
