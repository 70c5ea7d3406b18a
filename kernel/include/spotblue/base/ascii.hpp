#pragma once
/// @file
/// Letters and digits of ASCII, the same in every locale: the standard library's own follow the
/// process's, and in a Turkish one "i" has no capital in ASCII.
///
/// Bytes of other letters (UTF-8, Latin-1) are neither letters nor digits here and stay as they
/// are.

#include <algorithm>
#include <string>
#include <string_view>

namespace spotblue {

[[nodiscard]] constexpr bool is_ascii_digit(char c) { return c >= '0' && c <= '9'; }
[[nodiscard]] constexpr bool is_ascii_capital(char c) { return c >= 'A' && c <= 'Z'; }
[[nodiscard]] constexpr bool is_ascii_letter(char c) {
  return is_ascii_capital(c) || (c >= 'a' && c <= 'z');
}
/// Blank, tab, or one of the letters that end a line or a page.
[[nodiscard]] constexpr bool is_ascii_blank(char c) { return c == ' ' || (c >= '\t' && c <= '\r'); }

[[nodiscard]] constexpr char ascii_lower(char c) {
  return is_ascii_capital(c) ? static_cast<char>(c + ('a' - 'A')) : c;
}
[[nodiscard]] constexpr char ascii_upper(char c) {
  return c >= 'a' && c <= 'z' ? static_cast<char>(c - ('a' - 'A')) : c;
}
/// The text with ascii_lower of each letter.
[[nodiscard]] inline std::string ascii_lower(std::string_view text) {
  std::string lowered(text);
  std::transform(lowered.begin(), lowered.end(), lowered.begin(),
                 [](char c) { return ascii_lower(c); });
  return lowered;
}
/// The text with ascii_upper of each letter.
[[nodiscard]] inline std::string ascii_upper(std::string_view text) {
  std::string raised(text);
  std::transform(raised.begin(), raised.end(), raised.begin(),
                 [](char c) { return ascii_upper(c); });
  return raised;
}
/// The text without is_ascii_blank at its ends.
[[nodiscard]] constexpr std::string_view trimmed(std::string_view text) {
  while (!text.empty() && is_ascii_blank(text.front())) {
    text.remove_prefix(1);
  }
  while (!text.empty() && is_ascii_blank(text.back())) {
    text.remove_suffix(1);
  }
  return text;
}
/// Whether two words are one, letter case of ASCII aside.
[[nodiscard]] constexpr bool same_ascii_word(std::string_view a, std::string_view b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](char x, char y) { return ascii_lower(x) == ascii_lower(y); });
}

}  // namespace spotblue
