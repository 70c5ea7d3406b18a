#pragma once
/// @file
/// What --help says, by example.

#include <CLI/CLI.hpp>

namespace spotblue::command {

extern const char* const kProgramHelp;
extern const char* const kModelHelp;
extern const char* const kLookHelp;
extern const char* const kDraftHelp;
extern const char* const kCheckHelp;
extern const char* const kCompareHelp;

/// Gives the app this text for --help in place of a generated one.
void set_help(CLI::App& app, const char* text);

}  // namespace spotblue::command
