#pragma once
/// @file
/// Where in a job's files an entry stands.

#include <string>
#include <utility>

namespace spotblue {

/// A line, counted from 1, of the job file or of a file that it includes.
struct JobLine {
  int number = 0;
  std::string file;  ///< Shown name of the included file; empty: the job file itself.

  JobLine() = default;
  // NOLINTNEXTLINE(google-explicit-constructor): a number is a line of the job file
  JobLine(int line) : number(line) {}
  JobLine(int line, std::string of) : number(line), file(std::move(of)) {}
  bool operator==(const JobLine&) const = default;
};

}  // namespace spotblue
