#include "report/value_tree.hpp"

#include <algorithm>
#include <charconv>
#include <utility>

#include "base/utf8.hpp"

namespace spotblue {
namespace {

constexpr std::string_view kReplacement = "\xEF\xBF\xBD";  // U+FFFD

}  // namespace

std::string ValueTree::quoting(std::string_view text) const {
  std::string sound;
  sound.reserve(text.size());
  while (!text.empty()) {
    const std::size_t length = utf8_length(text);
    sound += length > 0 ? text.substr(0, length) : kReplacement;
    text.remove_prefix(std::max<std::size_t>(length, 1));
  }
  return sound;
}

void ValueTree::put_number(double value) {
  const NumberText text(value);
  std::int64_t whole = 0;
  const std::string_view digits = text.view();
  const auto [end, status] = std::from_chars(digits.data(), digits.data() + digits.size(), whole);
  if (status == std::errc() && end == digits.data() + digits.size()) {
    add(whole);
  } else {
    add(value);
  }
}

void ValueTree::open(char bracket, Layout /*layout*/) {
  open_.push_back(bracket == '{' ? &add(Value::Object()) : &add(Value::List()));
}

void ValueTree::close(char /*bracket*/) { open_.pop_back(); }

Value& ValueTree::add(decltype(Value::held) held) {
  if (open_.empty()) {
    root_.held = std::move(held);
    return root_;
  }
  if (auto* const list = std::get_if<Value::List>(&open_.back()->held)) {
    return list->emplace_back(Value{std::move(held)});
  }
  auto& members = std::get<Value::Object>(open_.back()->held);
  return members.emplace_back(Member{std::move(key_), Value{std::move(held)}}).value;
}

}  // namespace spotblue
