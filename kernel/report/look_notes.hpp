#pragma once
/// @file
/// Every note of a look, those that state lengths in the reader's unit.

#include <cstddef>
#include <string>
#include <vector>

#include "report/text_paint.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/geometry/look.hpp"

namespace spotblue {

/// Notes of the reading, of the foul search, and of what is no thread of the tables.
[[nodiscard]] std::vector<Note> look_notes(const Look& look, LengthUnit unit);
/// The same as a table, with its heading; empty without notes.
[[nodiscard]] std::string notes_text(const Look& look, LengthUnit unit, const Paint& paint,
                                     std::size_t width);

}  // namespace spotblue
