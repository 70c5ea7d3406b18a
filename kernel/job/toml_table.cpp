#include "job/toml_table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "spotblue/base/file_bytes.hpp"
#include "spotblue/base/nearest.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/job/toml_screen.hpp"

namespace spotblue {
namespace {

std::string_view kind_of(const toml::node& node) {
  switch (node.type()) {
    case toml::node_type::table:
      return "a table";
    case toml::node_type::array:
      return "a list";
    case toml::node_type::string:
      return "a text";
    case toml::node_type::integer:
    case toml::node_type::floating_point:
      return "a number";
    case toml::node_type::boolean:
      return "true or false";
    default:
      return "a date or time";
  }
}

std::string at_line(const toml::source_region& source) {
  return source.begin ? fmt::format("line {}", source.begin.line) : std::string();
}

std::string joined(const std::string& a, const std::string& b) {
  return a.empty() || b.empty() ? a + b : a + ", " + b;
}

}  // namespace

TomlTable::TomlTable(std::shared_ptr<const toml::table> root, const toml::table* table,
                     std::string file, std::string place)
    : root_(std::move(root)), table_(table), file_(std::move(file)), place_(std::move(place)) {}

TomlTable TomlTable::read_file(const std::filesystem::path& file) {
  return read_text(read_bytes(file, kMostTomlMb, "a TOML file"), shown_name(file));
}

TomlTable TomlTable::read_text(std::string_view text, const std::string& file) {
  text = without_byte_order_mark(text);
  screen_toml(text, file);
  try {
    auto root = std::make_shared<const toml::table>(toml::parse(text, std::string_view(file)));
    const toml::table* table = root.get();
    return {std::move(root), table, file, ""};
  } catch (const toml::parse_error& problem) {
    throw Error(ErrorCode::bad_input, {file, at_line(problem.source())},
                "not TOML: " + std::string(problem.description()),
                "correct the line; texts need quotes, decimals a point and no comma, and a { ... } "
                "must end on "
                "the line it began on");
  }
}

const toml::node* TomlTable::find(std::string_view key) const {
  if (std::find(asked_.begin(), asked_.end(), key) == asked_.end()) {
    asked_.emplace_back(key);
  }
  return table_->get(key);
}

bool TomlTable::has(std::string_view key) const { return find(key) != nullptr; }

bool TomlTable::is_text(std::string_view key) const {
  const toml::node* node = find(key);
  return node != nullptr && node->is_string();
}

std::string TomlTable::inside(const std::string& name) const { return joined(place_, name); }

Error TomlTable::error(std::string_view key, const std::string& rule, std::string cure) const {
  const toml::node* node = key.empty() ? nullptr : table_->get(key);
  const std::string line = at_line(node != nullptr ? node->source() : table_->source());
  return {
      ErrorCode::bad_input, {file_, joined(line, inside(std::string(key)))}, rule, std::move(cure)};
}

// A key that nobody asked for and that begins alike is most likely this one, mistyped.
std::string TomlTable::mistyped(std::string_view key) const {
  std::vector<std::string> alike;
  for (const auto& [other, node] : *table_) {
    const bool asked = std::find(asked_.begin(), asked_.end(), other.str()) != asked_.end();
    if (!asked && other.str().substr(0, 1) == key.substr(0, 1)) {
      alike.emplace_back(other.str());
    }
  }
  return nearest_word(key, alike);
}

Error TomlTable::missing(std::string_view key) const {
  const std::string nearest = mistyped(key);
  return error(key, fmt::format("\"{}\" is missing", key),
               nearest.empty() ? fmt::format("add {} = ...", key)
                               : fmt::format("add {} = ..., or correct \"{}\"", key, nearest));
}

std::optional<std::string> TomlTable::find_text(std::string_view key) const {
  const toml::node* node = find(key);
  if (node == nullptr) {
    return std::nullopt;
  }
  auto value = node->value_exact<std::string>();
  if (!value) {
    throw error(key, fmt::format("need a text, got {}", kind_of(*node)), "put it in quotes");
  }
  return value;
}

std::optional<std::string> TomlTable::find_name(std::string_view key) const {
  auto value = find_text(key);
  if (value && value->empty()) {
    throw error(key, "the text is empty", "write something between the quotes");
  }
  return value;
}

std::string TomlTable::text(std::string_view key) const {
  auto value = find_name(key);
  if (!value) {
    throw missing(key);
  }
  return *std::move(value);
}

double TomlTable::finite_number(std::string_view key, const toml::node& node) const {
  if (!node.is_number()) {
    throw error(key, fmt::format("need a number, got {}", kind_of(node)),
                "write a number without quotes");
  }
  const auto value = node.value<double>();
  if (!value) {
    throw error(key, "the whole number has more digits than can be kept",
                "write one of 15 or less");
  }
  if (!std::isfinite(*value)) {
    throw error(key, "need a finite number", "write a number like 0.02");
  }
  return *value;
}

std::optional<double> TomlTable::find_number(std::string_view key) const {
  const toml::node* node = find(key);
  return node == nullptr ? std::nullopt : std::optional(finite_number(key, *node));
}

double TomlTable::number(std::string_view key) const {
  const auto value = find_number(key);
  if (!value) {
    throw missing(key);
  }
  return *value;
}

std::optional<int> TomlTable::find_whole(std::string_view key) const {
  const auto value = find_number(key);
  if (!value) {
    return std::nullopt;
  }
  if (*value != std::floor(*value)) {
    throw error(key, fmt::format("need a whole number, got {}", *value), "leave out the fraction");
  }
  constexpr int kMost = std::numeric_limits<int>::max();
  if (std::abs(*value) > kMost) {
    throw error(key, fmt::format("{} is too large a number", *value),
                fmt::format("write one of at most {}", kMost));
  }
  return static_cast<int>(*value);
}

std::optional<bool> TomlTable::find_flag(std::string_view key) const {
  const toml::node* node = find(key);
  if (node == nullptr) {
    return std::nullopt;
  }
  const auto value = node->value_exact<bool>();
  if (!value) {
    throw error(key, fmt::format("need true or false, got {}", kind_of(*node)),
                "write true or false without quotes");
  }
  return value;
}

Length TomlTable::to_length(std::string_view key, const toml::node& node, LengthUnit unit) const {
  if (const auto written = node.value_exact<std::string>()) {
    try {
      return parse_length(*written, unit);
    } catch (const Error& problem) {
      throw error(key, problem.rule(), problem.cure());
    }
  }
  if (!node.is_number()) {
    throw error(key, fmt::format("need a length, got {}", kind_of(node)),
                "write a number like 33.34 or a text like \"1 5/16\"");
  }
  const double value = finite_number(key, node);
  const Length length = unit == LengthUnit::mm ? Length::mm(value) : Length::inch(value);
  if (!std::isfinite(length.in_mm())) {
    throw error(key, fmt::format("{} in is no length", value), "write a number like 33.34");
  }
  return length;
}

std::optional<Length> TomlTable::find_length(std::string_view key, LengthUnit unit) const {
  const toml::node* node = find(key);
  return node == nullptr ? std::nullopt : std::optional(to_length(key, *node, unit));
}

Length TomlTable::length(std::string_view key, LengthUnit unit) const {
  const auto value = find_length(key, unit);
  if (!value) {
    throw missing(key);
  }
  return *value;
}

std::vector<std::string> TomlTable::texts(std::string_view key) const {
  std::vector<std::string> out;
  const toml::node* node = find(key);
  if (node == nullptr) {
    return out;
  }
  const toml::array* list = node->as_array();
  if (list == nullptr) {
    return {text(key)};
  }
  for (const toml::node& item : *list) {
    const auto value = item.value_exact<std::string>();
    if (!value) {
      throw error(key, fmt::format("need a list of texts, got {} in it", kind_of(item)),
                  "put each one in quotes");
    }
    out.push_back(*value);
  }
  return out;
}

std::vector<Length> TomlTable::lengths(std::string_view key, LengthUnit unit) const {
  std::vector<Length> out;
  const toml::node* node = find(key);
  if (node == nullptr) {
    return out;
  }
  const toml::array* list = node->as_array();
  if (list == nullptr) {
    return {to_length(key, *node, unit)};
  }
  for (const toml::node& item : *list) {
    out.push_back(to_length(key, item, unit));
  }
  return out;
}

std::optional<TomlTable> TomlTable::find_table(std::string_view key) const {
  const toml::node* node = find(key);
  if (node == nullptr) {
    return std::nullopt;
  }
  if (!node->is_table()) {
    throw error(key, fmt::format("need a table, got {}", kind_of(*node)),
                fmt::format("write [{0}] on a line of its own, or {0} = {{ ... }}", key));
  }
  TomlTable table(root_, node->as_table(), file_, inside(std::string(key)));
  table.included_ = included_;
  return table;
}

std::vector<TomlTable> TomlTable::tables(std::string_view key) const {
  std::vector<TomlTable> out;
  const toml::node* node = find(key);
  if (node == nullptr) {
    return out;
  }
  const toml::array* list = node->as_array();
  if (list == nullptr) {
    throw error(key, fmt::format("need a list of tables, got {}", kind_of(*node)),
                fmt::format("write [[{0}]] on a line of its own, or {0} = [{{ ... }}]", key));
  }
  for (const toml::node& item : *list) {
    if (!item.is_table()) {
      throw error(key, fmt::format("need a list of tables, got {} in it", kind_of(item)),
                  "write each entry as { key = value, ... }");
    }
    out.push_back(TomlTable(root_, item.as_table(), file_,
                            inside(fmt::format("{} {}", key, out.size() + 1))));
    out.back().included_ = included_;
  }
  return out;
}

std::vector<std::pair<std::string, TomlTable>> TomlTable::named_tables() const {
  std::vector<std::pair<toml::source_position, std::string>> order;
  for (const auto& [key, node] : *table_) {
    order.emplace_back(key.source().begin, key.str());
  }
  std::sort(order.begin(), order.end(), [](const auto& a, const auto& b) {
    return a.first != b.first ? a.first < b.first : a.second < b.second;
  });
  std::vector<std::pair<std::string, TomlTable>> out;
  for (const auto& [position, key] : order) {
    TomlTable table = *find_table(key);
    table.set_place(inside(fmt::format("\"{}\"", key)));
    out.emplace_back(key, std::move(table));
  }
  return out;
}

void TomlTable::refuse_unknown() const {
  const toml::key* first = nullptr;
  for (const auto& [key, node] : *table_) {
    const bool known = std::find(asked_.begin(), asked_.end(), key.str()) != asked_.end();
    if (!known && (first == nullptr || key.source().begin < first->source().begin)) {
      first = &key;
    }
  }
  if (first == nullptr) {
    return;
  }
  const std::string name(first->str());
  const std::string nearest = nearest_word(name, asked_);
  throw Error(ErrorCode::bad_input, {file_, joined(at_line(first->source()), inside(name))},
              fmt::format("unknown key \"{}\"", name),
              nearest.empty() ? "remove it" : fmt::format("did you mean \"{}\"?", nearest));
}

}  // namespace spotblue
