#pragma once
/// @file
/// Files that appear whole or not at all.

#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "spotblue/base/error.hpp"
#include "spotblue/base/export.hpp"

namespace spotblue {

/// What is thrown where a result cannot be written, with the reason that errno gives: file_access,
/// or system where the machine has no room for it.
[[nodiscard]] SPOTBLUE_EXPORT Error cannot_be_written(const std::string& name, int reason);

/// Writes the bytes into a draft of a random name beside the file, which takes its place once it is
/// on the disk.
///
/// One that is there keeps its mode; a link stays, and what it leads to is replaced; a device or a
/// pipe is written to.
/// @throws Error as cannot_be_written; what was there is then as it was.
SPOTBLUE_EXPORT void write_whole(const std::filesystem::path& file, std::string_view bytes);

/// Looks at a draft before it takes its place; what it throws keeps the draft from doing so.
using DraftCheck = std::function<void(const std::filesystem::path& draft)>;

/// The same, with a draft that `check` has found good: beside the file, or in the temp folder
/// where the file is a device or a pipe.
/// @throws Error as cannot_be_written, or what `check` throws.
SPOTBLUE_EXPORT void write_whole(const std::filesystem::path& file, std::string_view bytes,
                                 const DraftCheck& check);

/// Whether two names lead to one file that is there, by links of whatever kind.
[[nodiscard]] SPOTBLUE_EXPORT bool is_same_file(const std::filesystem::path& one,
                                                const std::filesystem::path& other);

/// @throws Error bad_input when `output` is the very file of one of the inputs; empty names are
/// none.
SPOTBLUE_EXPORT void refuse_overwriting(const std::filesystem::path& output,
                                        const std::vector<std::filesystem::path>& inputs);

}  // namespace spotblue
