#pragma once
/// @file
/// What --help says, by example; made from the table.

#include <string>
#include <string_view>
#include <vector>

#include "command/table.hpp"

namespace spotblue::command {

[[nodiscard]] std::string program_help();
[[nodiscard]] std::string verb_help(const Verb& verb);
/// "--unit mm|in"
[[nodiscard]] std::string shown_option(const Option& option);
/// The lines of a text, without their ends.
[[nodiscard]] std::vector<std::string_view> lines_of(std::string_view text);

}  // namespace spotblue::command
