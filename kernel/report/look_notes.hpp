#pragma once
/// @file
/// Every note of a look, those that state lengths in the reader's unit.

#include <vector>

#include "spotblue/base/unit.hpp"
#include "spotblue/geometry/look.hpp"

namespace spotblue {

/// Notes of the reading, of the clash search, and of what is no thread of the tables.
[[nodiscard]] std::vector<Note> look_notes(const Look& look, LengthUnit unit);

}  // namespace spotblue
