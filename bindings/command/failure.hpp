#pragma once
/// @file
/// How the program says that something is wrong: one line on standard error.

#include <functional>
#include <string_view>

namespace spotblue::command {

/// Runs it; what is thrown becomes one line and exit code 2.
int contained(const std::function<int()>& run);

/// Writes "spotblue: <message>", as shown_text, as one line on standard error.
void say_failure(std::string_view message);

}  // namespace spotblue::command
