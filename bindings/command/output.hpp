#pragma once
/// @file
/// Where results go: standard output or a file, whole or not at all.

#include <filesystem>
#include <string>
#include <string_view>

namespace spotblue::command {

/// Makes sure that file descriptors 0, 1 and 2 are open, so that no file opened later takes the
/// place of a closed standard output; writing to one that was closed still fails.
void hold_standard_streams();

/// @throws Error bad_input when `output` is the very file `input`, by whatever path.
void refuse_overwriting(const std::filesystem::path& output, const std::filesystem::path& input);

/// Writes to `output`, or to standard output when it is empty. A file appears whole or not at all.
/// @throws Error file_access with the system's reason.
void write_result(std::string_view text, const std::filesystem::path& output);

/// Whether standard output is a terminal that shows colour: not when NO_COLOR is set or TERM is
/// "dumb".
[[nodiscard]] bool shows_colour();

}  // namespace spotblue::command
