#include "report/finding_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <vector>

#include "report/measure_text.hpp"
#include "report/text_table.hpp"
#include "report/text_words.hpp"
#include "spotblue/base/ascii.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/report/sentence_text.hpp"

namespace spotblue {
namespace {

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

struct Label {
  std::string_view name, words;
};
// Where a machinist says it otherwise than the key does.
constexpr std::array<Label, 8> kLabels{{{"hub_utilisation", "hub strength used"},
                                        {"inner_utilisation", "inner strength used"},
                                        {"blind_spots", "not allowed for"},
                                        {"engaged", "length together"},
                                        {"coverage", "touches round"},
                                        {"root_sum_square", "by chance"},
                                        {"by_lot", "random assemblies"},
                                        {"overlap_most", "allowed overlap"}}};

std::string words_of(const std::string& name) {
  const auto* const label = std::find_if(kLabels.begin(), kLabels.end(),
                                         [&](const Label& one) { return one.name == name; });
  if (label != kLabels.end()) {
    return std::string(label->words);
  }
  std::string words = name;
  std::replace(words.begin(), words.end(), '_', ' ');
  return words;
}

std::string value_text(const Quantity& quantity, LengthUnit unit) {
  const auto* const measure = std::get_if<Measure>(&quantity.value);
  return measure != nullptr ? measure_cell(*measure, unit)
                            : shown_text(text_of(std::get<Saying>(quantity.value), unit));
}

std::string_view shown_unit(const Quantity& quantity, LengthUnit unit) {
  return unit_of(dimension_of(quantity), unit);
}

class QuantityRows {
 public:
  explicit QuantityRows(LengthUnit unit) : unit_(unit) {}

  void add(const std::vector<Quantity>& quantities, std::size_t column) {
    for (const Quantity& quantity : quantities) {
      Cell& cell = row(quantity).cells[column];
      (quantity.end == RangeEnd::least      ? cell.least
       : quantity.end == RangeEnd::greatest ? cell.most
                                            : cell.single) = value_text(quantity, unit_);
    }
  }
  [[nodiscard]] const std::vector<QuantityRow>& rows() const { return rows_; }

 private:
  QuantityRow& row(const Quantity& quantity) {
    const std::string name = words_of(quantity.name);
    const std::string_view shown = shown_unit(quantity, unit_);
    const auto found = std::find_if(rows_.begin(), rows_.end(), [&](const QuantityRow& row) {
      return row.name == name && row.unit == shown;
    });
    if (found != rows_.end()) {
      return *found;
    }
    return rows_.emplace_back(QuantityRow{name, std::string(shown), {}});
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
  const std::string_view unit_name = shown_unit(first, unit);
  return value_text(first, unit) + (unit_name.empty() ? "" : " ") + std::string(unit_name);
}

std::string alike_key(const Finding& finding) {
  std::string key = finding.kind + '\n' + std::string(outcome_name(finding.outcome)) + '\n';
  std::string reasons =
      text_of(finding.basis) + '\n' + text_of(finding.advice) + '\n' + text_of(finding.caution);
  for (const Reference& about : finding.about) {
    const std::string name = without_place(about.name);
    key += name + '\n';
    reasons = replaced(reasons, about.name, name);
  }
  Finding placeless = finding;
  std::erase_if(placeless.found,
                [](const Quantity& quantity) { return quantity.name.starts_with("at_"); });
  return key + quantities_text(placeless, LengthUnit::mm, 0, 0) + reasons;
}

}  // namespace spotblue
