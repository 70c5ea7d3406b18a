#include "job/job_wants.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <tuple>

#include "job/entry_keys.hpp"

namespace spotblue {
namespace {

AxialWant read_axial_want(const TomlTable& entry, LengthUnit unit) {
  AxialWant want;
  want.line = entry.job_line();
  if (const auto kind = entry.find_text("kind")) {
    want.kind = read_word<AxialWantKind>(entry, "kind", *kind);
  }
  std::tie(want.a, want.b) = read_pair(entry, "between");
  if (want.a == want.b) {
    throw entry.error("between", fmt::format("\"{}\" stands on both sides", want.a),
                      "name the two faces or parts that look at each other");
  }
  if (want.kind == AxialWantKind::touch) {
    want.greatest = read_tolerance(entry, "within", unit);
    want.least = -want.greatest;
  } else {
    const Limits gap = read_limits(entry, "gap", unit);
    if (gap.lower < Length()) {
      throw entry.error("gap", "a gap is not less than 0",
                        "an overlap that is meant goes into [[allow]] with its reason");
    }
    want.least = gap.lower;
    want.greatest = gap.upper;
  }
  entry.refuse_unknown();
  return want;
}

bool is_end_play_of_part(const TomlTable& entry) {
  constexpr std::array<std::string_view, 2> either{"between", "of"};
  return only_one_of(entry, either) == "of";
}

EndPlayWant read_end_play_want(const TomlTable& entry, LengthUnit unit) {
  EndPlayWant want;
  want.line = entry.job_line();
  want.of = entry.text("of");
  if (const auto kind = entry.find_text("kind");
      kind && *kind != word_of(AxialWantKind::end_play)) {
    throw entry.error("kind", fmt::format("\"{}\" is between two faces or parts", *kind),
                      "write between = [\"one\", \"other\"], or kind = \"end play\" with of");
  }
  want.gap = read_limits(entry, "gap", unit);
  if (want.gap.lower < Length()) {
    throw entry.error("gap", "end play is not less than 0", "write [least, greatest]");
  }
  want.on = entry.find_name("on");
  if (want.on == want.of) {
    throw entry.error("on", fmt::format("\"{}\" has no play on itself", want.of),
                      "name the part that it travels on, or leave \"on\" out");
  }
  entry.refuse_unknown();
  return want;
}

}  // namespace

std::vector<EndPlayWant> read_end_play(const TomlTable& top, LengthUnit unit) {
  std::vector<EndPlayWant> wants;
  FirstUse parts;
  for (const TomlTable& entry : top.tables("wants")) {
    if (is_end_play_of_part(entry)) {
      wants.push_back(read_end_play_want(entry, unit));
      const EndPlayWant& want = wants.back();
      parts.note(entry, "of", want.on ? want.of + "\" on \"" + *want.on : want.of);
    }
  }
  return wants;
}

std::vector<AxialWant> read_axial_wants(const TomlTable& top, LengthUnit unit) {
  std::vector<AxialWant> wants;
  FirstUse pairs;
  for (const TomlTable& entry : top.tables("wants")) {
    if (is_end_play_of_part(entry)) {
      continue;
    }
    wants.push_back(read_axial_want(entry, unit));
    pairs.note(entry, "between", pair_text(wants.back().a, wants.back().b));
  }
  return wants;
}

std::vector<TaperWant> read_tapers(const TomlTable& top, LengthUnit unit) {
  std::vector<TaperWant> tapers;
  FirstUse pairs;
  for (const TomlTable& entry : top.tables("tapers")) {
    TaperWant want;
    want.line = entry.job_line();
    want.hole = read_feature(entry, "hole");
    want.shaft = read_feature(entry, "shaft");
    want.angle_within_deg = entry.number("half_angle_within_deg");
    if (want.angle_within_deg < 0.0 || want.angle_within_deg > 90.0) {
      throw entry.error("half_angle_within_deg",
                        fmt::format("need 0 to 90, got {}", want.angle_within_deg),
                        "write the greatest difference of the two half angles in degrees");
    }
    if (entry.has("gap")) {
      const Limits gap = read_limits(entry, "gap", unit);
      want.gap = ClearanceLimits{gap.lower, gap.upper};
    }
    entry.refuse_unknown();
    pairs.note(entry, "hole", want.hole + "\" with \"" + want.shaft);
    tapers.push_back(want);
  }
  return tapers;
}

std::vector<AllowedOverlap> read_allowed(const TomlTable& top, LengthUnit unit) {
  std::vector<AllowedOverlap> allowed;
  FirstUse pairs;
  for (const TomlTable& entry : top.tables("allow")) {
    AllowedOverlap overlap;
    overlap.line = entry.job_line();
    std::tie(overlap.a, overlap.b) = read_pair(entry, "parts");
    overlap.reason = entry.text("reason");
    overlap.depth = read_size(entry, "depth", unit);
    entry.refuse_unknown();
    pairs.note(entry, "parts", pair_text(overlap.a, overlap.b));
    allowed.push_back(overlap);
  }
  return allowed;
}

}  // namespace spotblue
