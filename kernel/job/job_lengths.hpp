#pragma once
// Distances of two faces, and roughness, as a job file says it; what is wrong without the model is
// refused.

#include <vector>

#include "job/toml_table.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

[[nodiscard]] std::vector<Surface> read_surfaces(const TomlTable& top);
[[nodiscard]] std::vector<PartLength> read_part_lengths(const TomlTable& top, LengthUnit unit);

}  // namespace spotblue
