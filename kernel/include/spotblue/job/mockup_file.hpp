#pragma once
/// @file
/// Reading a mock-up written by hand as TOML.

#include <filesystem>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/mockup.hpp"
#include "spotblue/job/outside.hpp"

namespace spotblue {

/// Reads and checks a mock-up file.
///
/// The file gives `title`, `unit` ("mm" or "inch"), [[part]] with name and kind, [[line]] and
/// [[place]]; `include` names files below its folder (elsewhere only where `outside` allows it)
/// whose parts, lines and placements are added, for what several plans share. Lengths are numbers
/// in that unit or texts like "1 5/16" or "12 mm"; angles are degrees. models/README.md lists every
/// key.
///
/// @throws Error file_access when the file cannot be opened; bad_input with file, line, part and
///         step for unknown keys (with the nearest known), wrong types, and everything check_parts
///         and place_parts refuse.
[[nodiscard]] SPOTBLUE_EXPORT Mockup read_mockup(const std::filesystem::path& file,
                                                 Outside outside = Outside::refused);

}  // namespace spotblue
