#pragma once
/// @file
/// A look as text for a terminal, in the words of the trade.

#include <string>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/report/text.hpp"

namespace spotblue {

/// Parts, then each centre line with what bears on it, keys, fouls, notes and a summary.
///
/// Lengths to 0.0001 mm or 0.00001 in, angles in degrees. Seats and centre lines that read alike
/// stand there once, with their number. Names are shown_text.
[[nodiscard]] SPOTBLUE_EXPORT std::string look_text(const Look& look, const TextStyle& style);

}  // namespace spotblue
