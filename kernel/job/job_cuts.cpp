#include "job/job_cuts.hpp"

#include <fmt/format.h>

#include <array>
#include <string>
#include <vector>

#include "job/entry_keys.hpp"

namespace spotblue {
namespace {

// How much of the feature goes: a shaft was thicker, a bore narrower, a face stood higher.
void read_metal(const TomlTable& entry, LengthUnit unit, Cut& cut) {
  constexpr std::array words{FeatureWord::outside, FeatureWord::bore, FeatureWord::face};
  const FeatureName feature = read_feature(entry, "feature", unit, words);
  if (feature.word == FeatureWord::face) {
    cut.depth = read_size(entry, "depth", unit);
    return;
  }
  const Length before = read_size(entry, "before", unit);
  cut.before = before;
  const Length after = feature.sizes.at(0);
  const bool shaft = feature.word == FeatureWord::outside;
  if (shaft ? before <= after : before >= after) {
    throw entry.error(
        "before",
        fmt::format("{} is not {} than the {} that shall be left", format_size(before, unit),
                    shaft ? "more" : "less", format_size(after, unit)),
        "the feature's name has its size after the cut, before has it as it is now");
  }
}

Cut read_cut(const TomlTable& entry, LengthUnit unit) {
  constexpr Interval moments_nm{0.0, 1e7};
  Cut cut;
  cut.line = entry.line();
  cut.feature = entry.text("feature");
  read_metal(entry, unit, cut);
  const auto feature = parse_feature_name(cut.feature, unit);
  if (feature->word != FeatureWord::outside) {
    entry.refuse_unknown();
    return cut;
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
