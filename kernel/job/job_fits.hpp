#pragma once
// Wanted fits, threads and sizes, as a job file says it; what is wrong without the model is
// refused.

#include <vector>

#include "job/toml_table.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

[[nodiscard]] std::vector<FitWant> read_fits(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<ThreadWant> read_threads(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<SizeWant> read_sizes(const TomlTable& top, LengthUnit unit);

}  // namespace spotblue
