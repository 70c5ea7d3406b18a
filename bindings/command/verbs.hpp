#pragma once
/// @file
/// The verbs of the program, each run on a command line that was understood.

#include <csignal>

#include "command/given.hpp"

namespace spotblue::command {

/// What the program ends with; kReaderGone as a shell says that SIGPIPE ended it: the reader of
/// standard output went away before all was written.
enum ExitCode : int {
  kAllWell = 0,
  kNonconforming = 1,
  kBadInput = 2,
  kUndecided = 3,
  kReaderGone = 128 + SIGPIPE
};

// In the module library, which loads Open CASCADE.
ExitCode run_model(const Given& given);
ExitCode run_look(const Given& given);
ExitCode run_draft(const Given& given);
ExitCode run_check(const Given& given);
ExitCode run_compare(const Given& given);
ExitCode run_materials(const Given& given);

/// Loads the module library and runs the verb there.
/// @throws Error file_access when the library is not beside the program or of another build.
ExitCode run_in_module(const Given& given);
/// "library" and "which", which the Python package does: the program becomes Python.
ExitCode run_in_python(const Given& given);

}  // namespace spotblue::command
