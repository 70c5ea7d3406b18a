#include "geometry/part21/step_token.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <system_error>

namespace spotblue {
namespace {

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }
constexpr bool is_letter(char c) {
  return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || c == '_';
}

std::size_t past_digits(std::string_view token, std::size_t at) {
  while (at < token.size() && is_digit(token[at])) {
    ++at;
  }
  return at;
}

// [sign] digits [. digits] [E [sign] digits], with a digit before or behind the point.
bool is_number(std::string_view token) {
  const std::size_t begin = token.front() == '+' || token.front() == '-' ? 1 : 0;
  std::size_t at = past_digits(token, begin);
  std::size_t digits = at - begin;
  if (at < token.size() && token[at] == '.') {
    const std::size_t end = past_digits(token, at + 1);
    digits += end - at - 1;
    at = end;
  }
  if (digits == 0) {
    return false;
  }
  if (at < token.size() && token[at] == 'E') {
    ++at;
    at += at < token.size() && (token[at] == '+' || token[at] == '-') ? 1 : 0;
    const std::size_t end = past_digits(token, at);
    return end > at && end == token.size();
  }
  return at == token.size();
}

bool is_finite(std::string_view number) {
  constexpr std::size_t kSurelyFinite = 18;  // digits and all, without an exponent
  const auto exponent = number.find('E');
  if (exponent == std::string_view::npos && number.size() <= kSurelyFinite) {
    return true;
  }
  number.remove_prefix(number.front() == '+' ? 1 : 0);
  double value = 0.0;
  const auto read = std::from_chars(number.data(), number.data() + number.size(), value);
  // Too small is as good as nothing; too large is no size.
  return read.ec == std::errc{} ? std::isfinite(value)
                                : exponent != std::string_view::npos &&
                                      number.find('-', exponent) != std::string_view::npos;
}

bool is_choice(std::string_view token) {
  return token.size() > 2 && token.front() == '.' && token.back() == '.' &&
         std::all_of(token.begin() + 1, token.end() - 1,
                     [](char c) { return is_letter(c) || is_digit(c); });
}

std::size_t past_string(std::string_view text, std::size_t at, char quote) {
  const std::size_t close = text.find(quote, at + 1);
  return close == std::string_view::npos ? text.size() : close + 1;
}

}  // namespace

std::size_t skip_blank(std::string_view text, std::size_t at) {
  while (at < text.size()) {
    if (is_blank(text[at])) {
      ++at;
    } else if (text[at] == '/' && at + 1 < text.size() && text[at + 1] == '*') {
      const std::size_t close = text.find("*/", at + 2);
      at = close == std::string_view::npos ? text.size() : close + 2;
    } else {
      break;
    }
  }
  return at;
}

std::size_t past_token(std::string_view text, std::size_t at) {
  const char c = text[at];
  if (c == '\'' || c == '"') {
    std::size_t end = past_string(text, at, c);
    while (c == '\'' && end < text.size() && text[end] == '\'') {
      end = past_string(text, end, c);  // '' within a string
    }
    return end;
  }
  const auto goes_on = [](char d) { return is_word(d) || d == '.' || d == '+'; };
  std::size_t end = at + 1;
  if (goes_on(c) || c == '#' || c == '&' || c == '!' || c == '@') {
    while (end < text.size() && goes_on(text[end])) {
      ++end;
    }
  }
  return end;
}

std::size_t next_token(std::string_view text, std::size_t at) {
  return skip_blank(text, past_token(text, at));
}

std::size_t line_at(std::string_view text, std::size_t at) {
  return 1 + static_cast<std::size_t>(
                 std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n'));
}

const char* token_fault(std::string_view token, bool opens) {
  const char first = token.front();
  if (is_letter(first) || first == '!') {
    return opens ? nullptr : "is no value";
  }
  if (first == '.' && !(token.size() > 1 && is_digit(token[1]))) {
    return is_choice(token) ? nullptr : "is no value";
  }
  if (is_digit(first) || first == '+' || first == '-' || first == '.') {
    return !is_number(token) ? "is no number" : is_finite(token) ? nullptr : "is no finite number";
  }
  return first == '\'' || first == '"' || first == '$' || first == '*' ? nullptr : "is no value";
}

}  // namespace spotblue
