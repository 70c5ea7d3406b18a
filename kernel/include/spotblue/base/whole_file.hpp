#pragma once
/// @file
/// Files that appear whole or not at all.

#include <filesystem>
#include <string_view>

#include "spotblue/base/export.hpp"

namespace spotblue {

/// Writes the bytes into a draft of a random name beside the file, which takes its place once it is
/// on the disk.
///
/// One that is there keeps its mode; a link stays, and what it leads to is replaced; a device or a
/// pipe is written to.
/// @throws Error file_access with the system's reason; what was there is then as it was.
SPOTBLUE_EXPORT void write_whole(const std::filesystem::path& file, std::string_view bytes);

}  // namespace spotblue
