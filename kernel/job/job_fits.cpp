#include "job/job_fits.hpp"

#include <fmt/format.h>

#include <array>

#include "job/entry_keys.hpp"
#include "spotblue/base/ascii.hpp"
#include "spotblue/standards/b4_1.hpp"
#include "spotblue/standards/threads.hpp"

namespace spotblue {
namespace {

constexpr std::array<std::string_view, 5> kRules{
    "class", "clearance", "interference", "clearance_per_diameter", "interference_per_diameter"};
// More than this for each unit of diameter is a length written by mistake, not an allowance.
constexpr double kMostPerDiameter = 0.02;

ClassFit read_class(const TomlTable& entry, LengthUnit unit) {
  ClassFit fit;
  fit.text = entry.text("class");
  fit.nominal = find_size(entry, "nominal", unit);
  if (fit.text.find('/') != std::string::npos) {
    fit.system = FitSystem::iso_286;
    return fit;
  }
  if (has_b4_1_letters(fit.text) && fit.text.size() > 2 && is_ascii_digit(fit.text[2])) {
    fit.system = FitSystem::ansi_b4_1;
    return fit;
  }
  throw entry.error("class", fmt::format("\"{}\" is no fit", fit.text),
                    "write an ISO 286 fit with both classes like \"H7/s6\", or one of ANSI B4.1 "
                    "like \"FN2\"");
}

// "0.001 in/in" or "1/1000": a length per length, whatever the unit.
double ratio_of_text(const TomlTable& entry, std::string_view key) {
  std::string text = entry.text(key);
  for (const std::string_view per : {"in/in", "inch/inch", "mm/mm"}) {
    if (text.ends_with(per)) {
      text.erase(text.size() - per.size());
      break;
    }
  }
  try {
    if (text.find_first_of("cimnh\"") == std::string::npos) {
      return parse_length(text, LengthUnit::mm).in_mm();
    }
  } catch (const Error&) {  // said below, in words that fit a ratio
  }
  throw entry.error(key, fmt::format("\"{}\" is no length per length", entry.text(key)),
                    "write it like \"0.001 in/in\" or 0.001");
}

double read_ratio(const TomlTable& entry, std::string_view key) {
  const double ratio = entry.is_text(key) ? ratio_of_text(entry, key) : entry.number(key);
  if (!(ratio >= 0.0) || !(ratio <= kMostPerDiameter)) {
    throw entry.error(key, fmt::format("need 0 to {}, got {}", kMostPerDiameter, ratio),
                      "write the allowance for one unit of diameter, like 0.001");
  }
  return ratio;
}

PerDiameter read_per_diameter(const TomlTable& entry, std::string_view key, LengthUnit unit) {
  PerDiameter rule;
  const double ratio = read_ratio(entry, key);
  rule.clearance = key == "interference_per_diameter" && ratio > 0.0 ? -ratio : ratio;
  rule.tolerance = read_tolerance(entry, "tolerance", unit);
  rule.nominal = find_size(entry, "nominal", unit);
  return rule;
}

FitRule read_rule(const TomlTable& entry, LengthUnit unit) {
  const std::string_view key = only_one_of(entry, kRules);
  if (key == "class") {
    return read_class(entry, unit);
  }
  if (key == "clearance") {
    const Limits limits = read_limits(entry, key, unit);
    return ClearanceLimits{limits.lower, limits.upper};
  }
  if (key == "interference") {
    const Limits limits = read_limits(entry, key, unit);
    return ClearanceLimits{-limits.upper, -limits.lower};
  }
  return read_per_diameter(entry, key, unit);
}

FitWant read_fit(const TomlTable& entry, LengthUnit unit) {
  FitWant want;
  want.line = entry.job_line();
  want.hole = read_feature(entry, "hole");
  want.shaft = read_feature(entry, "shaft");
  want.rule = read_rule(entry, unit);
  entry.refuse_unknown();
  return want;
}

ThreadWant read_thread(const TomlTable& entry, LengthUnit unit) {
  ThreadWant want;
  want.line = entry.job_line();
  want.hole = read_feature(entry, "hole");
  want.screw = read_feature(entry, "screw");
  want.size = entry.text("size");
  if (!find_thread(want.size)) {
    throw entry.error("size", fmt::format("\"{}\" is in no table of threads", want.size),
                      "write it as \"M16\", \"M20x1\" or \"3/4-10 UNC\"");
  }
  want.engaged = find_size(entry, "engaged", unit);
  if (want.engaged) {
    want.reason = entry.text("reason");
  }
  entry.refuse_unknown();
  return want;
}

}  // namespace

std::vector<FitWant> read_fits(const TomlTable& top, LengthUnit unit) {
  std::vector<FitWant> fits;
  FirstUse pairs;
  for (const TomlTable& entry : top.tables("fits")) {
    fits.push_back(read_fit(entry, unit));
    pairs.note(entry, "hole", fits.back().hole + "\" with \"" + fits.back().shaft);
  }
  return fits;
}

std::vector<ThreadWant> read_threads(const TomlTable& top, LengthUnit unit) {
  std::vector<ThreadWant> threads;
  FirstUse pairs;
  for (const TomlTable& entry : top.tables("threads")) {
    threads.push_back(read_thread(entry, unit));
    pairs.note(entry, "hole", threads.back().hole + "\" with \"" + threads.back().screw);
  }
  return threads;
}

std::vector<SizeWant> read_sizes(const TomlTable& top, LengthUnit unit) {
  constexpr std::array<std::string_view, 2> rules{"class", "limits"};
  std::vector<SizeWant> sizes;
  FirstUse names;
  for (const TomlTable& entry : top.tables("sizes")) {
    SizeWant want;
    want.line = entry.job_line();
    want.feature = read_feature(entry, "feature");
    if (only_one_of(entry, rules) == "class") {
      want.rule = entry.text("class");
      want.nominal = find_size(entry, "nominal", unit);
    } else {
      want.rule = read_limits(entry, "limits", unit);
      if (std::get<Limits>(want.rule).lower <= Length()) {
        throw entry.error("limits", "a size is more than 0", "write the two limits of the size");
      }
    }
    entry.refuse_unknown();
    names.note(entry, "feature", want.feature);
    sizes.push_back(want);
  }
  return sizes;
}

}  // namespace spotblue
