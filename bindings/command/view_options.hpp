#pragma once
/// @file
/// Options that several verbs share, and what they mean.

#include <CLI/CLI.hpp>
#include <filesystem>
#include <string>

#include "spotblue/geometry/look.hpp"
#include "spotblue/report/text.hpp"

namespace spotblue::command {

struct ViewOptions {
  std::filesystem::path file;
  std::filesystem::path output;  ///< empty: standard output
  std::string unit;              ///< empty: the file's own
  bool json = false;
  bool accept_partial = false;
};

void add_output(CLI::App& verb, ViewOptions& options);
void add_unit(CLI::App& verb, ViewOptions& options);
void add_json(CLI::App& verb, ViewOptions& options);
void add_accept_partial(CLI::App& verb, ViewOptions& options);

/// The unit asked for; otherwise inches for a file written in inches or feet, else mm.
[[nodiscard]] LengthUnit unit_for(const ViewOptions& options, const FileInfo& file);
[[nodiscard]] TextStyle style_for(const ViewOptions& options, LengthUnit unit);
/// Looks at the file with the progress line shown.
[[nodiscard]] Look look_with_progress(const ViewOptions& options);

}  // namespace spotblue::command
