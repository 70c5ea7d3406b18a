#pragma once
/// @file
/// The known word nearest to one that was mistyped, for error messages.

#include <span>
#include <string>
#include <string_view>

#include "spotblue/base/export.hpp"

namespace spotblue {

/// The entry of `known` with the fewest single-letter edits (insert, drop, change) from `word`,
/// letter case aside, by their first 200 bytes; the first of several equally near; empty when
/// `known` is empty.
[[nodiscard]] SPOTBLUE_EXPORT std::string nearest_word(std::string_view word,
                                                       std::span<const std::string> known);

/// nearest_word where it is no more than a quarter of the word's letters off, one at the least:
/// what was mistyped, and not what merely comes nearest. Empty else.
[[nodiscard]] SPOTBLUE_EXPORT std::string likely_word(std::string_view word,
                                                      std::span<const std::string> known);

}  // namespace spotblue
