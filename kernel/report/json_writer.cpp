#include "report/json_writer.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <nlohmann/json.hpp>

#include "base/utf8.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {

namespace {

// RFC 8259, 7: any letter may stand as \uXXXX; all that are unshown lie below U+10000.
std::string without_unshown(std::string quoted) {
  if (std::all_of(quoted.begin(), quoted.end(), [](char c) { return c >= ' ' && c < '\x7F'; })) {
    return quoted;
  }
  std::string out;
  out.reserve(quoted.size());
  std::string_view text = quoted;
  while (!text.empty()) {
    const std::string_view letter = text.substr(0, std::max<std::size_t>(utf8_length(text), 1));
    if (is_unshown(letter)) {
      out += nlohmann::json(letter).dump(-1, ' ', true).substr(1);
      out.pop_back();
    } else {
      out += letter;
    }
    text.remove_prefix(letter.size());
  }
  return out;
}

}  // namespace

std::string json_quoted(std::string_view text) {
  return without_unshown(
      nlohmann::json(text).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace));
}

NumberText::NumberText(double value) {
  const auto end = std::to_chars(digits_.data(), digits_.data() + digits_.size(), value).ptr;
  size_ = static_cast<std::size_t>(end - digits_.data());
}

void JsonWriter::key(std::string_view name) {
  last_key_ = name;
  put_key(name);
}

void JsonWriter::number(double value) {
  if (!std::isfinite(value)) {
    throw Error(ErrorCode::bad_input, {"", last_key_}, "the value is not a finite number",
                "report the model that gives it");
  }
  put_number(value == 0.0 ? 0.0 : value);
}

void JsonText::next_in_level() {
  if (levels_.empty()) {
    return;
  }
  Level& level = levels_.back();
  if (!level.empty) {
    out_ += level.layout == Layout::one_line ? ", " : ",";
  }
  level.empty = false;
  if (level.layout == Layout::line_each) {
    out_ += '\n';
    out_.append(levels_.size(), ' ');
  }
}

void JsonText::before_value() {
  if (after_key_) {
    after_key_ = false;
    return;
  }
  next_in_level();
}

void JsonText::put_key(std::string_view name) {
  next_in_level();
  out_ += '"';
  out_ += name;
  out_ += "\": ";
  after_key_ = true;
}

void JsonText::open(char bracket, Layout layout) {
  before_value();
  out_ += bracket;
  levels_.push_back({layout, true});
}

void JsonText::close(char bracket) {
  const Level level = levels_.back();
  levels_.pop_back();
  if (level.layout == Layout::line_each && !level.empty) {
    out_ += '\n';
    out_.append(levels_.size(), ' ');
  }
  out_ += bracket;
}

void JsonText::put_number(double value) {
  before_value();
  out_ += NumberText(value).view();
}

void JsonText::whole(std::int64_t value) {
  before_value();
  out_ += std::to_string(value);
}

void JsonText::truth(bool value) {
  before_value();
  out_ += value ? "true" : "false";
}

void JsonText::quoted(std::string_view value) {
  before_value();
  out_ += value;
}

}  // namespace spotblue
