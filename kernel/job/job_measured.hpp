#pragma once
// What was measured, as a job file says it; what is wrong without the model is refused.

#include <vector>

#include "job/toml_table.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

/// Of `measured`, the entries with a feature's size, and those with a gap between two faces.
struct Measured {
  std::vector<MeasuredSize> sizes;
  std::vector<MeasuredGap> gaps;
};
[[nodiscard]] Measured read_measured(const TomlTable& top, LengthUnit unit);

}  // namespace spotblue
