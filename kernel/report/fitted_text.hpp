#pragma once
/// @file
/// Texts fitted to the columns of a terminal: how many one takes; spotblue/report/text.hpp has
/// fitted_text itself.

#include <cstddef>
#include <string_view>

namespace spotblue {

/// Columns that the text takes on a terminal: two for a wide letter, none for a combining mark or a
/// sequence for colour.
[[nodiscard]] std::size_t shown_width(std::string_view text);

}  // namespace spotblue
