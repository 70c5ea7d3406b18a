#pragma once
// The lists of a job file, one function a list; each refuses what is wrong without the model.

#include <vector>

#include "job/toml_table.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

[[nodiscard]] std::vector<JobPart> read_parts(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<OwnMaterial> read_materials(const TomlTable& top);
[[nodiscard]] std::vector<FitWant> read_fits(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<SizeWant> read_sizes(const TomlTable& top, LengthUnit unit);
/// Of `measured`, the entries with a feature's size, and those with a gap between two faces.
struct Measured {
  std::vector<MeasuredSize> sizes;
  std::vector<MeasuredGap> gaps;
};
[[nodiscard]] Measured read_measured(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<AxialWant> read_axial_wants(const TomlTable& top, LengthUnit unit);
/// Of `wants`, those that say `of` in place of `between`.
[[nodiscard]] std::vector<EndPlayWant> read_end_play(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<TaperWant> read_tapers(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<AllowedOverlap> read_allowed(const TomlTable& top, LengthUnit unit);
[[nodiscard]] Conditions read_conditions(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<Turning> read_turning(const TomlTable& top);
[[nodiscard]] std::vector<Join> read_joins(const TomlTable& top);
[[nodiscard]] std::vector<KeepOff> read_keep_off(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<Surface> read_surfaces(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<PartLength> read_part_lengths(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<Mesh> read_meshes(const TomlTable& top, LengthUnit unit);
[[nodiscard]] std::vector<Cut> read_cuts(const TomlTable& top, LengthUnit unit);
/// `default_uncertainty`, every SeatSettings by its name, and the bounds of the read.
[[nodiscard]] JobSettings read_settings(const TomlTable& top, LengthUnit unit);

}  // namespace spotblue
