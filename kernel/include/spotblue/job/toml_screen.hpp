#pragma once
/// @file
/// What is found out about a TOML text before it is parsed: parsers recurse, and end the process on
/// what nests or is dotted without end.

#include <string>
#include <string_view>

#include "spotblue/base/export.hpp"

namespace spotblue {

/// In 10^6 bytes. Files of people are far smaller; a larger one is none of theirs.
inline constexpr double kMostTomlMb = 16.0;

/// @throws Error bad_input with file and line where a letter is no UTF-8 or NUL, a letter beyond
/// ASCII stands outside texts and comments, brackets nest deeper than 32, a key has more than 16
/// parts, or the text is larger than kMostTomlMb.
SPOTBLUE_EXPORT void screen_toml(std::string_view text, const std::string& file);

}  // namespace spotblue
