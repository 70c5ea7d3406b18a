#include "job/job_measured.hpp"

#include <array>
#include <string_view>
#include <tuple>

#include "job/entry_keys.hpp"

namespace spotblue {
namespace {

MeasuredSize read_measured_size(const TomlTable& entry, LengthUnit unit) {
  MeasuredSize size;
  size.line = entry.job_line();
  size.feature = read_feature(entry, "feature");
  size.value = read_size(entry, "size", unit);
  return size;
}

MeasuredGap read_measured_gap(const TomlTable& entry, LengthUnit unit) {
  MeasuredGap gap;
  gap.line = entry.job_line();
  std::tie(gap.a, gap.b) = read_features(entry, "between");
  gap.value = entry.length("gap", unit);
  return gap;
}

std::optional<Length> find_uncertainty(const TomlTable& entry, LengthUnit unit) {
  return entry.has("uncertainty") ? std::optional(read_tolerance(entry, "uncertainty", unit))
                                  : std::nullopt;
}

}  // namespace

Measured read_measured(const TomlTable& top, LengthUnit unit) {
  constexpr std::array<std::string_view, 2> kinds{"feature", "between"};
  Measured measured;
  FirstUse names;
  for (const TomlTable& entry : top.tables("measured")) {
    if (only_one_of(entry, kinds) == "feature") {
      measured.sizes.push_back(read_measured_size(entry, unit));
      measured.sizes.back().uncertainty = find_uncertainty(entry, unit);
      names.note(entry, "feature", measured.sizes.back().feature);
    } else {
      measured.gaps.push_back(read_measured_gap(entry, unit));
      measured.gaps.back().uncertainty = find_uncertainty(entry, unit);
      names.note(entry, "between", pair_text(measured.gaps.back().a, measured.gaps.back().b));
    }
    entry.refuse_unknown();
  }
  return measured;
}

}  // namespace spotblue
