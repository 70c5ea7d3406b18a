#pragma once
/// @file
/// Length units as people write them: reading "1 5/16", "0.75 in" or "44", and writing lengths
/// back.

#include <string>
#include <string_view>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"

namespace spotblue {

/// The two units people measure with in a workshop.
enum class LengthUnit { mm, inch };
constexpr auto describe(const LengthUnit*) {
  return words("The two units people measure with in a workshop.", "mm", "inch");
}

/// Reads a length written as a decimal ("33.34"), a fraction ("5/16"), or a whole and a fraction
/// ("1 5/16", "1-5/16"), with an optional unit after it ("mm", "in", "\"").
///
/// @param text   what the person wrote; surrounding blanks are ignored; a leading minus is allowed.
/// @param unit   unit of a bare number.
/// @throws Error bad_input when the text is no length; the text says what was read and what would
/// do.
[[nodiscard]] SPOTBLUE_EXPORT Length parse_length(std::string_view text, LengthUnit unit);

/// "mm" or "in".
[[nodiscard]] SPOTBLUE_EXPORT std::string_view unit_name(LengthUnit unit);

/// Unit by its name: "mm", "inch" or "in".
/// @throws Error bad_input for anything else.
[[nodiscard]] SPOTBLUE_EXPORT LengthUnit parse_unit(std::string_view name);

/// A length as a number in the given unit with this many decimals and no unit behind it; never
/// "-0".
[[nodiscard]] SPOTBLUE_EXPORT std::string format_length(Length length, LengthUnit unit,
                                                        int decimals);

/// A size with no more decimals than it needs (at most 4 in mm, 5 in inch): 44, 6.6, 25.4.
[[nodiscard]] SPOTBLUE_EXPORT std::string format_size(Length length, LengthUnit unit);

}  // namespace spotblue
