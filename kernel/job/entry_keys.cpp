#include "job/entry_keys.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "spotblue/base/nearest.hpp"
#include "spotblue/job/feature_name.hpp"

namespace spotblue {

void FirstUse::note(const TomlTable& entry, std::string_view key, const std::string& text) {
  for (const auto& [earlier, line] : seen_) {
    if (earlier == text) {
      throw entry.error(key, fmt::format("\"{}\" is already given in line {}", text, line),
                        "keep one of the two entries");
    }
  }
  seen_.emplace_back(text, entry.line());
}

Limits read_limits(const TomlTable& entry, std::string_view key, LengthUnit unit) {
  const std::vector<Length> both = entry.lengths(key, unit);
  if (both.size() != 2) {
    throw entry.error(key, fmt::format("need two lengths, got {}", both.size()),
                      fmt::format("write {} = [least, greatest]", key));
  }
  if (both[0] > both[1]) {
    throw entry.error(key,
                      fmt::format("the limits are reversed: {} is more than {}",
                                  format_size(both[0], unit), format_size(both[1], unit)),
                      "write the lesser one first");
  }
  return {both[0], both[1]};
}

Length read_size(const TomlTable& entry, std::string_view key, LengthUnit unit) {
  const Length size = entry.length(key, unit);
  if (size <= Length()) {
    throw entry.error(key, fmt::format("need more than 0, got {}", format_size(size, unit)),
                      "write the size as measured");
  }
  return size;
}

std::optional<Length> find_size(const TomlTable& entry, std::string_view key, LengthUnit unit) {
  return entry.has(key) ? std::optional(read_size(entry, key, unit)) : std::nullopt;
}

Length read_tolerance(const TomlTable& entry, std::string_view key, LengthUnit unit) {
  const Length size = entry.length(key, unit);
  if (size < Length()) {
    throw entry.error(key, fmt::format("need 0 or more, got {}", format_size(size, unit)),
                      "leave out the minus; it counts either way");
  }
  return size;
}

double read_number(const TomlTable& entry, std::string_view key, Interval range) {
  const double value = entry.number(key);
  if (!(value >= range.low) || !(value <= range.high)) {
    throw entry.error(
        key, fmt::format("need {:.6g} to {:.6g}, got {:.6g}", range.low, range.high, value),
        "check the number and its unit");
  }
  return value;
}

std::optional<double> find_number(const TomlTable& entry, std::string_view key, Interval range) {
  return entry.has(key) ? std::optional(read_number(entry, key, range)) : std::nullopt;
}

namespace {

void require_feature(const TomlTable& entry, std::string_view key, const std::string& text) {
  if (part_of_feature(text).empty() || text.ends_with(": ")) {
    throw entry.error(
        key, fmt::format("\"{}\" is no feature name", text),
        "write it as `spotblue look` prints it: part, colon, blank, and what the part "
        "has there, like \"Wheel: bore\"");
  }
}

}  // namespace

std::string read_feature(const TomlTable& entry, std::string_view key) {
  std::string text = entry.text(key);
  require_feature(entry, key, text);
  return text;
}

std::pair<std::string, std::string> read_pair(const TomlTable& entry, std::string_view key) {
  const std::vector<std::string> both = entry.texts(key);
  if (both.size() != 2 || both[0].empty() || both[1].empty()) {
    throw entry.error(key, fmt::format("need two names, got {}", both.size()),
                      fmt::format("write {} = [\"one\", \"other\"]", key));
  }
  return {both[0], both[1]};
}

std::pair<std::string, std::string> read_features(const TomlTable& entry, std::string_view key) {
  std::pair<std::string, std::string> both = read_pair(entry, key);
  require_feature(entry, key, both.first);
  require_feature(entry, key, both.second);
  return both;
}

std::string pair_text(std::string a, std::string b) {
  if (b < a) {
    std::swap(a, b);
  }
  return a + "\" with \"" + b;
}

std::string_view only_one_of(const TomlTable& entry, std::span<const std::string_view> keys) {
  std::vector<std::string_view> given;
  for (const std::string_view key : keys) {
    if (entry.has(key)) {
      given.push_back(key);
    }
  }
  const auto mistyped = given.empty()
                            ? std::find_if(keys.begin(), keys.end(),
                                           [&](auto key) { return !entry.mistyped(key).empty(); })
                            : keys.end();
  if (mistyped != keys.end()) {
    throw entry.missing(*mistyped);
  }
  if (given.size() != 1) {
    throw entry.error(given.empty() ? "" : given.back(),
                      given.empty()
                          ? std::string("it lacks what it is about")
                          : fmt::format("{} contradict each other", fmt::join(given, " and ")),
                      fmt::format("give exactly one of {}", fmt::join(keys, ", ")));
  }
  return given.front();
}

std::size_t read_choice(const TomlTable& entry, std::string_view key, std::string_view text,
                        std::span<const std::string_view> known) {
  const auto found = std::find(known.begin(), known.end(), text);
  if (found == known.end()) {
    throw entry.error(
        key, fmt::format("\"{}\" is none of \"{}\"", text, fmt::join(known, "\", \"")),
        fmt::format("did you mean \"{}\"?",
                    nearest_word(text, std::vector<std::string>(known.begin(), known.end()))));
  }
  return static_cast<std::size_t>(found - known.begin());
}

namespace {

std::string key_of(std::string_view name, const UnitKey& unit) {
  return fmt::format("{}{}", name, unit.ending);
}

}  // namespace

std::optional<double> find_in_units(const TomlTable& entry, std::string_view name,
                                    std::span<const UnitKey> units, Interval range) {
  std::optional<double> value;
  std::string by;
  for (const UnitKey& unit : units) {
    const std::string key = key_of(name, unit);
    const auto in_unit = [&unit](double of_first) {
      return (of_first - unit.of_none) / unit.of_one;
    };
    const auto given = find_number(entry, key, {in_unit(range.low), in_unit(range.high)});
    if (!given) {
      continue;
    }
    if (value) {
      throw entry.error(key, fmt::format("{} is given by {} already", name, by),
                        "keep one of the two");
    }
    value = unit.of_none + *given * unit.of_one;
    by = key;
  }
  return value;
}

double read_in_units(const TomlTable& entry, std::string_view name, std::span<const UnitKey> units,
                     Interval range) {
  if (const auto value = find_in_units(entry, name, units, range)) {
    return *value;
  }
  throw entry.missing(key_of(name, units.front()));
}

}  // namespace spotblue
