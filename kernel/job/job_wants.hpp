#pragma once
// Wanted gaps, end plays and tapers, and overlaps that are meant, as a job file says it; what is
// wrong without the model is refused.

#include <vector>

#include "job/toml_table.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

[[nodiscard]] std::vector<AxialWant> read_axial_wants(const TomlTable& top, LengthUnit unit);
/// Of `wants`, those that say `of` in place of `between`.
[[nodiscard]] std::vector<EndPlayWant> read_end_play(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<TaperWant> read_tapers(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<AllowedOverlap> read_allowed(const TomlTable& top, LengthUnit unit);

}  // namespace spotblue
