#pragma once
/// @file
/// A file's bytes, read once.

#include <filesystem>
#include <string>
#include <string_view>

#include "spotblue/base/export.hpp"

namespace spotblue {

/// The bytes of an ordinary file: a pipe or a device is refused at once, never waited for.
/// @param wanted what the file should have been, for the cure: "a STEP file".
/// @throws Error file_access (missing, no ordinary file, not to be read), unreadable (empty, larger
///         than `most_mb`, in 10^6 bytes) or system (no memory for it, too many open files).
[[nodiscard]] SPOTBLUE_EXPORT std::string read_bytes(const std::filesystem::path& file,
                                                     double most_mb, std::string_view wanted);

/// Without UTF-8's byte order mark at the front, where there is one.
[[nodiscard]] SPOTBLUE_EXPORT std::string_view without_byte_order_mark(std::string_view text);
SPOTBLUE_EXPORT void drop_byte_order_mark(std::string& text);

}  // namespace spotblue
