#pragma once
/// @file
/// Reading a STEP file into plain values, in a contained child process.

#include <filesystem>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

/// Reads AP203, AP214 or AP242 in any length unit; everything arrives in mm.
///
/// The text is scanned first and refused when absurd; the kernel then reads it in a child process
/// with limits on time and memory, so that no file can crash, hang or exhaust the caller.
///
/// @param completeness  all_or_error: a file from which fewer products, occurrences, solids or
/// faces
///                      arrive than its text declares is refused by name of what is missing;
///                      accept_partial: what is missing is listed in the notes.
/// @throws Error file_access (missing, unreadable), unreadable (no STEP, damaged, too deep, too
///         large, kernel crashed, out of time or memory, no solid), incomplete (something missing).
///
/// Forks: safe from any thread, but not while another thread holds kernel locks.
[[nodiscard]] SPOTBLUE_EXPORT Model read_step(const std::filesystem::path& file,
                                              const ReadLimits& limits, Completeness completeness);

}  // namespace spotblue
