#pragma once
/// @file
/// Results as text for a terminal, in the words of the trade.

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

#include "spotblue/base/export.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/check/check.hpp"
#include "spotblue/check/compare.hpp"
#include "spotblue/geometry/look.hpp"

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

/// Parts, then each centre line with what bears on it, keys, clashes, notes and a summary.
///
/// Lengths to 0.0001 mm or 0.00001 in, angles in degrees. Seats and centre lines that read alike
/// stand there once, with their number. Names are shown_text.
[[nodiscard]] SPOTBLUE_EXPORT std::string look_text(const Look& look, const TextStyle& style);

/// Every finding, the nonconforming first, then the undecided, then the conforming, with a summary
/// as the last line. Findings that read alike but for their place stand there once, with the ids of
/// the next few; a caution stands in full where it is first due.
[[nodiscard]] SPOTBLUE_EXPORT std::string check_text(const CheckResult& result,
                                                     const TextStyle& style);

/// Each finding that differs from plan to plan or does not conform, a row with outcome and margin
/// for each plan; then what each plan takes; the last line says which one stands and what would
/// change that.
/// @param plans  those the comparison was made of, in the same order.
[[nodiscard]] SPOTBLUE_EXPORT std::string compare_text(const Comparison& comparison,
                                                       std::span<const CheckResult> plans,
                                                       const TextStyle& style);

}  // namespace spotblue
