#include "report/finding_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <vector>

#include "report/text_table.hpp"
#include "report/text_words.hpp"
#include "spotblue/base/ascii.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

enum class End { both, least, most };

/// A key taken apart: "clearance_min_mm" is the least end of "clearance" in mm.
struct KeyParts {
  std::string name;
  End end = End::both;
  std::string unit;
};

bool cut(std::string& text, std::string_view ending) {
  if (!text.ends_with(ending)) {
    return false;
  }
  text.erase(text.size() - ending.size());
  return true;
}

/// A unit of force, pressure or speed by its key, as metric and as inch jobs show it.
struct WorkUnit {
  std::string_view key, name, inch_name;
  double in_inch_jobs;  // value in the inch job's unit, of 1 in the metric one
};
// By the definitions of the units: 1 in is 25.4 mm, 1 lb 0.45359237 kg, standard gravity 9.80665
// m/s2. Longer keys first.
constexpr std::array<WorkUnit, 9> kWorkUnits{{
    {"mpa_m_s", "MPa m/s", "psi ft/min", 145.03774 * 196.85039},
    {"m_s", "m/s", "ft/min", 196.85039},
    {"mpa", "MPa", "psi", 145.03774},
    {"nm", "N m", "lbf in", 8.8507458},
    {"n", "N", "lbf", 0.22480894},
    {"um", "um", "uin", 39.370079},
    {"c", "deg C", "deg C", 1.0},
    {"rpm", "rev/min", "rev/min", 1.0},
    {"percent", "%", "%", 1.0},
}};

const WorkUnit* find_work_unit(std::string_view key) {
  const auto* const found = std::find_if(kWorkUnits.begin(), kWorkUnits.end(),
                                         [&](const WorkUnit& unit) { return unit.key == key; });
  return found == kWorkUnits.end() ? nullptr : found;
}

std::string unit_of_key(const std::string& key) {
  for (const WorkUnit& unit : kWorkUnits) {
    if (key.ends_with("_" + std::string(unit.key))) {
      return std::string(unit.key);
    }
  }
  const auto at = key.rfind('_');
  return at == std::string::npos ? "" : key.substr(at + 1);
}

KeyParts parts_of(const Quantity& quantity) {
  KeyParts parts{quantity.key, End::both, ""};
  if (std::holds_alternative<double>(quantity.value)) {
    parts.unit = unit_of_key(parts.name);
    cut(parts.name, "_" + parts.unit);
    parts.end = cut(parts.name, "_min")   ? End::least
                : cut(parts.name, "_max") ? End::most
                                          : End::both;
  }
  std::replace(parts.name.begin(), parts.name.end(), '_', ' ');
  return parts;
}

std::string number_text(double value, const std::string& key_unit, LengthUnit unit) {
  if (key_unit == "mm") {
    return length_cell(value, unit);
  }
  if (key_unit == "mm2") {
    return area_cell(value, unit);
  }
  if (key_unit == "mm3") {
    return volume_cell(value, unit);
  }
  if (key_unit == "deg") {
    return without_minus_zero(fmt::format("{:.3f}", value));
  }
  const WorkUnit* const work = find_work_unit(key_unit);
  if (work == nullptr) {
    return without_minus_zero(fmt::format("{:.6g}", value));
  }
  return without_minus_zero(
      fmt::format("{:.4g}", unit == LengthUnit::inch ? value * work->in_inch_jobs : value));
}

std::string shown_unit(const std::string& key_unit, LengthUnit unit) {
  if (const WorkUnit* const work = find_work_unit(key_unit)) {
    return std::string(unit == LengthUnit::inch ? work->inch_name : work->name);
  }
  const bool inches = unit == LengthUnit::inch && key_unit.starts_with("mm");
  return inches ? "in" + key_unit.substr(2) : key_unit;
}

class Cell {
 public:
  std::string least, most, single;
  [[nodiscard]] std::string text() const {
    const std::string range = range_text();
    return single.empty() || range == single ? range
           : range.empty()                   ? single
                                             : range + ", middle " + single;
  }

 private:
  [[nodiscard]] std::string range_text() const {
    if (least.empty() && most.empty()) {
      return "";
    }
    if (least.empty() || most.empty()) {
      return least.empty() ? "at most " + most : "at least " + least;
    }
    return least == most ? least : least + " to " + most;
  }
};

struct QuantityRow {
  std::string name;
  std::string unit;
  std::array<Cell, 3> cells;  // wanted, found, margin
};

class QuantityRows {
 public:
  explicit QuantityRows(LengthUnit unit) : unit_(unit) {}

  void add(const std::vector<Quantity>& quantities, std::size_t column) {
    for (const Quantity& quantity : quantities) {
      const KeyParts parts = parts_of(quantity);
      Cell& cell = row(parts).cells[column];
      const auto* const number = std::get_if<double>(&quantity.value);
      const std::string text = number != nullptr
                                   ? number_text(*number, parts.unit, unit_)
                                   : shown_text(std::get<std::string>(quantity.value));
      (parts.end == End::least  ? cell.least
       : parts.end == End::most ? cell.most
                                : cell.single) = text;
    }
  }
  [[nodiscard]] const std::vector<QuantityRow>& rows() const { return rows_; }

 private:
  QuantityRow& row(const KeyParts& parts) {
    const std::string shown = shown_unit(parts.unit, unit_);
    const auto found = std::find_if(rows_.begin(), rows_.end(), [&](const QuantityRow& row) {
      return row.name == parts.name && row.unit == shown;
    });
    if (found != rows_.end()) {
      return *found;
    }
    return rows_.emplace_back(QuantityRow{parts.name, shown, {}});
  }

  LengthUnit unit_;
  std::vector<QuantityRow> rows_;
};

// Whether an id that ends at `end` ends there for good: "bore 4" does not stand in "bore 44 @ 3".
bool ends_there(std::string_view text, std::size_t end) {
  const std::string_view rest = text.substr(end);
  if (rest.empty()) {
    return true;
  }
  const auto digit = [&rest](std::size_t i) { return i < rest.size() && is_ascii_digit(rest[i]); };
  const bool goes_on =
      digit(0) || ((rest[0] == '.' || rest[0] == '/' || rest[0] == 'x') && digit(1));
  return !goes_on && !rest.starts_with(" @ ") && !rest.starts_with(" #") && !rest.starts_with(": ");
}

std::string replaced(std::string_view text, const std::string& id, std::string_view with) {
  std::string result;
  for (std::size_t at = 0;;) {
    const std::size_t found = id.empty() ? std::string_view::npos : text.find(id, at);
    result += text.substr(at, found - at);
    if (found == std::string_view::npos) {
      return result;
    }
    result += ends_there(text, found + id.size()) ? with : std::string_view(id);
    at = found + id.size();
  }
}

// "Line/Station 7/Wheel (3): bore 44" without its place: "Wheel: bore 44".
std::string without_place(const std::string& about) {
  const auto colon = about.rfind(": ");
  std::string part = about.substr(0, colon);
  const std::string feature = colon == std::string::npos ? "" : about.substr(colon);
  part.erase(0, part.rfind('/') == std::string::npos ? 0 : part.rfind('/') + 1);
  const auto bracket = part.rfind(" (");
  if (bracket != std::string::npos && part.ends_with(')') &&
      part.find_first_not_of("0123456789", bracket + 2) == part.size() - 1) {
    part.erase(bracket);
  }
  return part + feature;
}

}  // namespace

std::string quantities_text(const Finding& finding, LengthUnit unit, std::size_t indent,
                            std::size_t width) {
  QuantityRows rows(unit);
  rows.add(finding.wanted, 0);
  rows.add(finding.found, 1);
  rows.add(finding.margin, 2);
  TextTable table({{""}, {"wanted"}, {"found"}, {"margin"}, {""}});
  for (const QuantityRow& row : rows.rows()) {
    table.add({row.name, row.cells[0].text(), row.cells[1].text(), row.cells[2].text(), row.unit});
  }
  return table.text(indent, width);
}

std::string margin_text(const Finding& finding, LengthUnit unit) {
  if (finding.margin.empty()) {
    return "";
  }
  const Quantity& first = finding.margin.front();
  const KeyParts parts = parts_of(first);
  const auto* const number = std::get_if<double>(&first.value);
  return number == nullptr ? shown_text(std::get<std::string>(first.value))
                           : fmt::format("{} {}", number_text(*number, parts.unit, unit),
                                         shown_unit(parts.unit, unit));
}

std::string spelt_within(std::string_view text, const Finding& finding, LengthUnit unit) {
  std::string result(text);
  for (const std::string& id : finding.about) {
    result = replaced(result, id, spelt_in(id, unit));
  }
  return shown_text(result);
}

std::string alike_key(const Finding& finding) {
  std::string key = finding.kind + '\n' + std::string(outcome_name(finding.outcome)) + '\n';
  std::string reasons = finding.basis + '\n' + finding.advice + '\n' + finding.caution;
  for (const std::string& id : finding.about) {
    const std::string name = without_place(id);
    key += name + '\n';
    reasons = replaced(reasons, id, name);
  }
  Finding placeless = finding;
  std::erase_if(placeless.found,
                [](const Quantity& quantity) { return quantity.key.starts_with("at_"); });
  return key + quantities_text(placeless, LengthUnit::mm, 0, 0) + reasons;
}

}  // namespace spotblue
