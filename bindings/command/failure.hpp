#pragma once
/// @file
/// How the program says that something is wrong: one line on standard error.

#include <string_view>

namespace spotblue::command {

/// Writes "spotblue: <message>", as shown_text, as one line on standard error.
void say_failure(std::string_view message);

}  // namespace spotblue::command
