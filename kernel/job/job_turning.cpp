#include "job/job_turning.hpp"

#include <fmt/format.h>

#include <array>
#include <string>
#include <string_view>
#include <tuple>

#include "job/entry_keys.hpp"
#include "spotblue/job/feature_name.hpp"
#include "spotblue/standards/threads.hpp"

namespace spotblue {
namespace {

constexpr Interval kLoads_n{0.0, 1e7};

Turning read_turning_entry(const TomlTable& entry, LengthUnit unit) {
  Turning turning;
  turning.line = entry.job_line();
  turning.part = entry.text("part");
  turning.rpm = read_number(entry, "rpm", {1e-3, 1e5});
  turning.duty = read_word<Duty>(entry, "duty", entry.text("duty"));
  turning.load_n = find_in_units(entry, "load", kForces, kLoads_n);
  turning.thrust_n = find_in_units(entry, "thrust", kForces, kLoads_n);
  turning.at = entry.find_name("at").value_or("");
  turning.out = entry.find_length("out", unit);
  if (turning.out && turning.at.empty()) {
    throw entry.error("out", "says how far past a face, and none is named",
                      "name the face: at = \"Shaft: face 2\"");
  }
  if (const auto shared = entry.find_text("shared")) {
    turning.sharing = read_word<LoadSharing>(entry, "shared", *shared);
  }
  entry.refuse_unknown();
  return turning;
}

void read_faces(const TomlTable& entry, Adjust& adjust) {
  if (!entry.has("between")) {
    return;
  }
  std::tie(adjust.from, adjust.to) = read_features(entry, "between");
  if (part_of_feature(*adjust.to) != adjust.part) {
    throw entry.error("between",
                      fmt::format("\"{}\" is no face of \"{}\"", *adjust.to, adjust.part),
                      "name the face of the part that is set second");
  }
}

Adjust read_adjust_entry(const TomlTable& entry, LengthUnit unit) {
  constexpr std::array<std::string_view, 3> ways{"thread", "pitch", "range"};
  Adjust adjust;
  adjust.line = entry.job_line();
  adjust.part = entry.text("part");
  const std::string_view way = only_one_of(entry, ways);
  if (way == "thread") {
    adjust.thread = entry.text("thread");
    if (!find_thread(*adjust.thread)) {
      throw entry.error("thread", fmt::format("\"{}\" is in no table of threads", *adjust.thread),
                        "write it as \"M16\", \"M16x1.5\" or \"3/4-10 UNC\", or give its pitch");
    }
  } else if (way == "pitch") {
    adjust.pitch = read_size(entry, "pitch", unit);
  } else {
    adjust.range = read_limits(entry, "range", unit);
    if (adjust.range->lower < Length()) {
      throw entry.error("range", "a length that is set is not less than 0",
                        "write [least, greatest]");
    }
  }
  read_faces(entry, adjust);
  entry.refuse_unknown();
  return adjust;
}

}  // namespace

std::vector<Turning> read_turning(const TomlTable& top, LengthUnit unit) {
  std::vector<Turning> all;
  FirstUse parts;
  for (const TomlTable& entry : top.tables("turning")) {
    all.push_back(read_turning_entry(entry, unit));
    parts.note(entry, "part", all.back().part);
  }
  return all;
}

std::vector<Fixing> read_fixed(const TomlTable& top) {
  if (top.has("joins")) {
    throw top.error("joins", "[[joins]] is called [[fixed]]", "write [[fixed]]");
  }
  std::vector<Fixing> all;
  FirstUse pairs;
  for (const TomlTable& entry : top.tables("fixed")) {
    Fixing fixing;
    fixing.line = entry.job_line();
    std::tie(fixing.a, fixing.b) = read_pair(entry, "parts");
    fixing.by = entry.text("by");
    entry.refuse_unknown();
    pairs.note(entry, "parts", pair_text(fixing.a, fixing.b));
    all.push_back(fixing);
  }
  return all;
}

std::vector<Adjust> read_adjust(const TomlTable& top, LengthUnit unit) {
  std::vector<Adjust> all;
  FirstUse parts;
  for (const TomlTable& entry : top.tables("adjust")) {
    all.push_back(read_adjust_entry(entry, unit));
    parts.note(entry, "part", all.back().part);
  }
  return all;
}

std::vector<KeepOff> read_keep_off(const TomlTable& top, LengthUnit unit) {
  std::vector<KeepOff> all;
  FirstUse pairs;
  for (const TomlTable& entry : top.tables("keep_off")) {
    KeepOff keep_off;
    keep_off.line = entry.job_line();
    std::tie(keep_off.a, keep_off.b) = read_pair(entry, "parts");
    keep_off.least = read_size(entry, "least", unit);
    keep_off.reason = entry.text("reason");
    entry.refuse_unknown();
    pairs.note(entry, "parts", pair_text(keep_off.a, keep_off.b));
    all.push_back(keep_off);
  }
  return all;
}

}  // namespace spotblue
