#pragma once
/// @file
/// Results as JSON, schema 2: what tests/reference/schema-2.json describes.

#include <string>

#include "spotblue/base/export.hpp"
#include "spotblue/check/check.hpp"
#include "spotblue/geometry/look.hpp"

namespace spotblue {

/// What was found on a STEP file, as one JSON object with a line for each part, seat and foul.
///
/// Lengths in mm, angles in degrees, areas in mm2, volumes in mm3, whatever unit the file or the
/// user prefers. Every number reads back to the same double; the order is that of the Look; a key
/// that does not apply is left out. Text that is no UTF-8 gets U+FFFD in place of each bad byte.
///
/// @throws Error bad_input when a value is not finite; the key is named.
/// Cost: about 2 microseconds for each occurrence or seat.
[[nodiscard]] SPOTBLUE_EXPORT std::string look_json(const Look& look);

/// The same with the job, its findings and how many there are of each outcome.
/// @throws Error as look_json.
[[nodiscard]] SPOTBLUE_EXPORT std::string check_json(const CheckResult& result);

}  // namespace spotblue
