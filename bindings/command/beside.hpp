#pragma once
/// @file
/// Where the program finds what belongs to it.

#include <filesystem>
#include <initializer_list>

namespace spotblue::command {

/// The first folder, given relative to the program's own, that holds `file`.
/// @throws Error file_access naming the first one, with `cure`, when none does.
[[nodiscard]] std::filesystem::path folder_beside_program(
    std::initializer_list<const char*> folders, const std::filesystem::path& file,
    const std::string& cure);

}  // namespace spotblue::command
