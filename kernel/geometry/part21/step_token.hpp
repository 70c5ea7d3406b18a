#pragma once
// The tokens of a STEP file: where each begins and ends, and whether one is what ISO 10303-21:2016,
// clause 6.4, lets stand for a value.

#include <cstddef>
#include <string_view>

namespace spotblue {

[[nodiscard]] constexpr bool is_blank(char c) {
  return c == ' ' || c == '\n' || c == '\r' || c == '\t' || c == '\f' || c == '\v';
}
// A letter, digit, '_' or '-' (the last for END-ISO-10303-21).
[[nodiscard]] constexpr bool is_word(char c) {
  return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_' ||
         c == '-';
}

// Past the blanks and comments at `at`.
[[nodiscard]] std::size_t skip_blank(std::string_view text, std::size_t at);

// Past the token at `at`; text.size() at the end, also when a string is not closed.
[[nodiscard]] std::size_t past_token(std::string_view text, std::size_t at);

// Where the token after the one at `at` begins: past this token and the blanks behind it. At
// least one further; text.size() at the end, also when a string or a comment is not closed.
[[nodiscard]] std::size_t next_token(std::string_view text, std::size_t at);

// Counted from 1.
[[nodiscard]] std::size_t line_at(std::string_view text, std::size_t at);

// What is wrong with a token among an entity's values, as "is no number"; null where nothing is.
// `opens`: a bracket follows it. Numbers may lack the point that the standard asks for, as many
// programs write them, but are finite and whole.
[[nodiscard]] const char* token_fault(std::string_view token, bool opens);

}  // namespace spotblue
