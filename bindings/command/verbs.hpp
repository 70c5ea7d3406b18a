#pragma once
/// @file
/// The verbs of the program; each adds itself to the command line.

#include <CLI/CLI.hpp>
#include <functional>

namespace spotblue::command {

/// What the program ends with.
enum ExitCode : int { kAllWell = 0, kNonconforming = 1, kBadInput = 2, kUndecided = 3 };

/// What to run once the command line is understood; gives the exit code.
using Run = std::function<ExitCode()>;

void add_model(CLI::App& app, Run& chosen);
void add_look(CLI::App& app, Run& chosen);
void add_draft(CLI::App& app, Run& chosen);
void add_check(CLI::App& app, Run& chosen);
void add_compare(CLI::App& app, Run& chosen);
/// "library" and "which", which the Python package does: the program becomes Python.
void add_shelf(CLI::App& app, Run& chosen);

}  // namespace spotblue::command
