#pragma once
/// @file
/// Where results go: standard output or a file, whole or not at all.

#include <filesystem>
#include <string>
#include <string_view>

#include "command/verbs.hpp"

namespace spotblue::command {

/// Makes sure that file descriptors 0, 1 and 2 are open, so that no file opened later takes the
/// place of a closed standard output; writing to one that was closed still fails.
void hold_standard_streams();

/// @throws Error bad_input when both are given and lead to one file.
void refuse_one_for_both(const std::filesystem::path& one, const std::filesystem::path& other);

/// Writes to `output`, or to standard output when it is empty. A file appears whole or not at all.
/// That the reader of standard output has gone away is no error; see ended_with.
/// @return `code`, or kReaderGone.
/// @throws Error as cannot_be_written.
[[nodiscard]] ExitCode write_result(std::string_view text, const std::filesystem::path& output,
                                    ExitCode code);

/// `code`; but of kReaderGone ends the program by SIGPIPE, without a word, as other programs end.
[[nodiscard]] int ended_with(int code);

/// Whether standard output is a terminal that shows colour: not when NO_COLOR is set or TERM is
/// "dumb".
[[nodiscard]] bool shows_colour();

/// Columns of the terminal that standard output is, by itself, else by COLUMNS, else 80; 0 where it
/// is none, so that what goes into files and pipes is the same on every machine.
[[nodiscard]] std::size_t terminal_width();

}  // namespace spotblue::command
