#pragma once
/// @file
/// A mock-up as a STEP file.

#include <filesystem>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/mockup.hpp"

namespace spotblue {

/// Makes the solids and writes them as a STEP assembly with the parts' and instances' names; one
/// product a part, however often it is placed. The file appears whole or not at all.
/// @throws Error as check_parts and place_parts; bad_input for a cut that misses the part or
///         breaks it in pieces, an `out` it was read from; file_access or system when `out`
///         cannot be written; open_cascade_failed.
///
/// Takes the process-wide lock of Open CASCADE's STEP code; silent.
SPOTBLUE_EXPORT void write_mockup(const Mockup& mockup, const std::filesystem::path& out);

}  // namespace spotblue
