#include "job/job_cuts.hpp"

#include <array>
#include <string_view>
#include <vector>

#include "job/entry_keys.hpp"

namespace spotblue {
namespace {

Cut read_cut(const TomlTable& entry, LengthUnit unit) {
  constexpr Interval moments_nm{0.0, 1e7};
  constexpr std::array<std::string_view, 2> metal{"before", "depth"};
  Cut cut;
  cut.line = entry.job_line();
  cut.feature = read_feature(entry, "feature");
  if (only_one_of(entry, metal) == "before") {
    cut.before = read_size(entry, "before", unit);
  } else {
    cut.depth = read_size(entry, "depth", unit);
  }
  if (entry.has("fillet")) {
    cut.fillet = read_tolerance(entry, "fillet", unit);
  }
  if (entry.has("mate_corner")) {
    cut.mate_corner = read_tolerance(entry, "mate_corner", unit);
  }
  cut.torque_nm = find_in_units(entry, "torque", kTorques, moments_nm);
  cut.bending_nm = find_in_units(entry, "bending", kTorques, moments_nm);
  entry.refuse_unknown();
  return cut;
}

}  // namespace

std::vector<Cut> read_cuts(const TomlTable& top, LengthUnit unit) {
  std::vector<Cut> cuts;
  FirstUse features;
  for (const TomlTable& entry : top.tables("cuts")) {
    cuts.push_back(read_cut(entry, unit));
    features.note(entry, "feature", cuts.back().feature);
  }
  return cuts;
}

}  // namespace spotblue
