#pragma once
/// @file
/// Sizes in words.

#include <string_view>

#include "spotblue/base/export.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/geometry/semantic_size.hpp"

namespace spotblue {

/// Reads "H7", "38 H7", "1 1/2 in +0.001/0", "38 +-0.1", "37.9 to 38.1" and all that
/// semantic_size_text writes: nominal, class, deviations and limits; the rest is left as it is.
/// Of two deviations the smaller is the lower one; they have the unit of the nominal.
///
/// @param unit  of a bare number.
/// @throws Error bad_input when the words are none of that; a class is not looked up.
[[nodiscard]] SPOTBLUE_EXPORT SemanticSize parse_size(std::string_view words, LengthUnit unit);

/// Whether this Open CASCADE's STEP reader passes over such a class, so that its limits should
/// stand beside it: it knows no J and no j.
[[nodiscard]] SPOTBLUE_EXPORT bool needs_limits(std::string_view tolerance_class);

}  // namespace spotblue
