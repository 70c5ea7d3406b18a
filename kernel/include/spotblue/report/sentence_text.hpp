#pragma once
/// @file
/// Sentences in words.

#include <string>

#include "spotblue/base/export.hpp"
#include "spotblue/group/sentence.hpp"

namespace spotblue {

/// Its sentences one after the other, "; " between them, lengths and names in the unit.
/// @return names as the model has them, and empty for none.
[[nodiscard]] SPOTBLUE_EXPORT std::string text_of(const Saying& saying, LengthUnit unit);
/// The same in its own unit.
[[nodiscard]] SPOTBLUE_EXPORT std::string text_of(const Saying& saying);

}  // namespace spotblue
