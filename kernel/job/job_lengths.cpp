#include "job/job_lengths.hpp"

#include <fmt/format.h>

#include <array>
#include <string>
#include <string_view>
#include <tuple>

#include "job/entry_keys.hpp"
#include "spotblue/job/feature_name.hpp"

namespace spotblue {
namespace {

PartLength read_part_length(const TomlTable& entry, LengthUnit unit) {
  constexpr std::array<std::string_view, 2> rules{"measured", "limits"};
  PartLength length;
  length.line = entry.job_line();
  std::tie(length.a, length.b) = read_features(entry, "between");
  const std::string part = part_of_feature(length.a);
  const std::string other = part_of_feature(length.b);
  if (part != other) {
    throw entry.error("between", fmt::format("\"{}\" and \"{}\" are two parts", part, other),
                      "a gap between two parts goes into [[measured]] or [[wants]]");
  }
  if (length.a == length.b) {
    throw entry.error("between", fmt::format("\"{}\" stands on both sides", length.a),
                      "name the two faces the length lies between");
  }
  if (only_one_of(entry, rules) == "measured") {
    length.measured = read_size(entry, "measured", unit);
    if (entry.has("uncertainty")) {
      length.uncertainty = read_tolerance(entry, "uncertainty", unit);
    }
  } else {
    length.limits = read_limits(entry, "limits", unit);
    if (length.limits->lower <= Length()) {
      throw entry.error("limits", "a length is more than 0",
                        "write both limits of the whole length: limits = [39.9, 40]");
    }
  }
  entry.refuse_unknown();
  return length;
}

}  // namespace

std::vector<PartLength> read_part_lengths(const TomlTable& top, LengthUnit unit) {
  std::vector<PartLength> lengths;
  FirstUse pairs;
  for (const TomlTable& entry : top.tables("lengths")) {
    lengths.push_back(read_part_length(entry, unit));
    pairs.note(entry, "between", pair_text(lengths.back().a, lengths.back().b));
  }
  return lengths;
}

std::vector<Surface> read_surfaces(const TomlTable& top) {
  std::vector<Surface> surfaces;
  FirstUse features;
  for (const TomlTable& entry : top.tables("surfaces")) {
    Surface surface;
    surface.line = entry.job_line();
    surface.feature = read_feature(entry, "feature");
    surface.rz_um = read_in_units(entry, "rz", kRoughnesses, kHeights_um);
    entry.refuse_unknown();
    features.note(entry, "feature", surface.feature);
    surfaces.push_back(surface);
  }
  return surfaces;
}

}  // namespace spotblue
