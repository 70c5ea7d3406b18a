#include <fmt/format.h>

#include <array>
#include <string>
#include <vector>

#include "job/entry_keys.hpp"
#include "job/job_entries.hpp"

namespace spotblue {
namespace {

Cut read_cut(const TomlTable& entry, LengthUnit unit) {
  constexpr std::array shafts{FeatureWord::outside};
  constexpr NumberRange moments_nm{0.0, 1e7};
  Cut cut;
  cut.line = entry.line();
  const FeatureName feature = read_feature(entry, "feature", unit, shafts);
  cut.feature = entry.text("feature");
  cut.before = read_size(entry, "before", unit);
  if (cut.before <= feature.sizes.at(0)) {
    throw entry.error(
        "before",
        fmt::format("{} is not more than the {} that shall be left", format_size(cut.before, unit),
                    format_size(feature.sizes.at(0), unit)),
        "the feature is the shaft after the cut, before its diameter now");
  }
  if (entry.has("fillet")) {
    cut.fillet = read_tolerance(entry, "fillet", unit);
  }
  if (entry.has("mate_corner")) {
    cut.mate_corner = read_tolerance(entry, "mate_corner", unit);
  }
  cut.torque_nm = find_number(entry, "torque_nm", moments_nm);
  cut.bending_nm = find_number(entry, "bending_nm", moments_nm);
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
