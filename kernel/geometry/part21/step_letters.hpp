#pragma once
// Letters beyond ASCII in the strings of STEP text (ISO 10303-21:2016, 6.4.3).

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "spotblue/base/export.hpp"

namespace spotblue {

// STEP text as Open CASCADE writes it, with every string on one line and its letters beyond ASCII
// as \X2\ or \X4\. Its writer puts bare UTF-8 and breaks lines inside a letter, which no reader
// puts together again. What is no UTF-8 stays.
[[nodiscard]] std::string with_coded_letters(std::string_view step);

// The same in a file that Open CASCADE has written. Exported for the plug-in, which writes some
// too. Throws Error file_access.
SPOTBLUE_EXPORT void code_letters_in(const std::filesystem::path& file);

// Whether the file ends as STEP text does: none that lacked room does. Exported as above.
[[nodiscard]] SPOTBLUE_EXPORT bool ends_as_step(const std::filesystem::path& file);

// The text with each byte that is no UTF-8 taken for a letter of Latin-1: Open CASCADE makes one
// letter of several such bytes. Nothing when all of it is UTF-8.
[[nodiscard]] std::optional<std::string> in_utf8(std::string_view step);

// Adds the letter as UTF-8; `code` < 0x110000.
void add_letter(std::string& to, std::uint32_t code);

// A string's value with \X\, \X2\, \X4\ and \S\ as UTF-8 and \\ as one backslash; what is none of
// these stays as it is.
[[nodiscard]] std::string decoded_letters(std::string_view value);

}  // namespace spotblue
