#pragma once
/// @file
/// Reading a job file: TOML with `schema = 1`, meant to be written by hand.

#include <filesystem>

#include "spotblue/base/export.hpp"
#include "spotblue/job/job.hpp"
#include "spotblue/job/outside.hpp"

namespace spotblue {

/// Reads and checks a job file; whatever it says that can be wrong without the model is refused.
///
/// Lengths are numbers in the file's `unit`, or strings with a fraction or a unit ("1 5/16",
/// "12 mm"). A relative `model` is taken from the job file's folder, below which it must lie
/// unless `outside` allows another place.
///
/// @throws Error file_access (missing, unreadable); bad_input with file, line and key: not TOML,
///         another schema, an unknown key (the nearest known one is named), a value of the wrong
///         kind, a model outside the folder, a material that is neither known nor the job's own,
///         limits the wrong way round, two rules in one entry or none, a fit, size, measured value
///         or part given twice. Class names are checked by the standards when judged.
[[nodiscard]] SPOTBLUE_EXPORT Job read_job(const std::filesystem::path& file,
                                           Outside outside = Outside::refused);

}  // namespace spotblue
