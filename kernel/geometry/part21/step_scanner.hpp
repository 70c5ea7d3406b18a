#pragma once
// One pass over the text of a STEP file, token by token.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/part21/step_text.hpp"

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

struct ScannedText {
  std::string_view header;
  std::size_t data_end = 0;                // where the last data section's ENDSEC begins
  std::vector<StepText::Entity> entities;  // in the order of their numbers
};

// See StepText.
[[nodiscard]] ScannedText scan_step(std::string_view text, const std::string& file,
                                    const ReadLimits& limits);

}  // namespace spotblue
