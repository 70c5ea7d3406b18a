#pragma once
/// @file
/// How results stand in text for a terminal: look_text.hpp, check_text.hpp and compare_text.hpp
/// make it.

#include <cstddef>
#include <string>
#include <string_view>

#include "spotblue/base/export.hpp"
#include "spotblue/base/unit.hpp"

namespace spotblue {

/// Whether escape sequences for colour may stand in the text; words say the same without them.
enum class Colour { never, terminal };

struct TextStyle {
  LengthUnit unit = LengthUnit::mm;  ///< of every length, area and volume, in feature names too
  Colour colour = Colour::never;
  /// Columns that no line goes beyond; less than kLeastWidth counts as that. 0: as wide as it
  /// needs, a line for each row of a table.
  std::size_t width = 0;
};

/// Columns that a text has at the least.
inline constexpr std::size_t kLeastWidth = 20;

/// The text with its longer lines broken, at blanks where there are any; nothing is left out.
/// @param width  columns, as TextStyle::width.
[[nodiscard]] SPOTBLUE_EXPORT std::string fitted_text(std::string_view text, std::size_t width);

}  // namespace spotblue
