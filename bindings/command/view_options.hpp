#pragma once
/// @file
/// Options that several verbs share, and what they mean.

#include <filesystem>
#include <string>
#include <vector>

#include "command/given.hpp"
#include "command/verbs.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/job/outside.hpp"
#include "spotblue/report/text.hpp"

namespace spotblue::command {

struct ViewOptions {
  std::filesystem::path file;
  std::filesystem::path output;  ///< empty: standard output
  std::string unit;              ///< empty: the file's own
  bool json = false;
  LookBounds bounds;  ///< --seconds, --memory and --accept-partial
  Outside outside = Outside::refused;
};

/// The first operand, where there is one, and what of these options was given.
[[nodiscard]] ViewOptions view_options(const Given& given);

/// What --allow-outside says.
[[nodiscard]] Outside outside_of(const Given& given);
/// All files that were read for the model.
[[nodiscard]] std::vector<std::filesystem::path> files_of(const Model& model);

/// The unit asked for; otherwise inches for a file written in inches or feet, else mm.
[[nodiscard]] LengthUnit unit_for(const ViewOptions& options, const FileInfo& file);
[[nodiscard]] TextStyle style_for(const ViewOptions& options, LengthUnit unit);
/// Looks at the file with the progress line shown.
[[nodiscard]] Look look_with_progress(const ViewOptions& options);
/// Undecided where anything of the model was not looked at: for want of time or memory, because it
/// did not arrive, or because it bounds no solid.
[[nodiscard]] ExitCode code_of(const Look& look);

}  // namespace spotblue::command
