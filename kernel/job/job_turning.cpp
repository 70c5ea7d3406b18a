#include "job/job_turning.hpp"

#include <fmt/format.h>

#include <string>
#include <tuple>

#include "job/entry_keys.hpp"

namespace spotblue {
namespace {

constexpr Interval kLoads_n{0.0, 1e7};

Turning read_turning_entry(const TomlTable& entry) {
  Turning turning;
  turning.line = entry.line();
  turning.part = entry.text("part");
  turning.rpm = read_number(entry, "rpm", {1e-3, 1e5});
  turning.duty = read_word<Duty>(entry, "duty", entry.text("duty"));
  turning.load_n = find_number(entry, "load_n", kLoads_n);
  turning.thrust_n = find_number(entry, "thrust_n", kLoads_n);
  entry.refuse_unknown();
  return turning;
}

}  // namespace

std::vector<Turning> read_turning(const TomlTable& top) {
  std::vector<Turning> all;
  FirstUse parts;
  for (const TomlTable& entry : top.tables("turning")) {
    all.push_back(read_turning_entry(entry));
    parts.note(entry, "part", all.back().part);
  }
  return all;
}

std::vector<Join> read_joins(const TomlTable& top) {
  std::vector<Join> joins;
  FirstUse pairs;
  for (const TomlTable& entry : top.tables("joins")) {
    Join join;
    join.line = entry.line();
    std::tie(join.a, join.b) = read_pair(entry, "parts");
    join.by = entry.text("by");
    entry.refuse_unknown();
    pairs.note(entry, "parts", pair_text(join.a, join.b));
    joins.push_back(join);
  }
  return joins;
}

std::vector<KeepOff> read_keep_off(const TomlTable& top, LengthUnit unit) {
  std::vector<KeepOff> all;
  FirstUse pairs;
  for (const TomlTable& entry : top.tables("keep_off")) {
    KeepOff keep_off;
    keep_off.line = entry.line();
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
