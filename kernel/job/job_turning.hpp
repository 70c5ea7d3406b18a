#pragma once
// What turns, what is held, what must stay off, as a job file says it; what is wrong without the
// model is refused.

#include <vector>

#include "job/toml_table.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

[[nodiscard]] std::vector<Turning> read_turning(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<Fixing> read_fixed(const TomlTable& top);
[[nodiscard]] std::vector<Adjust> read_adjust(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<KeepOff> read_keep_off(const TomlTable& top, LengthUnit unit);

}  // namespace spotblue
