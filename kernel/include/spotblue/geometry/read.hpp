#pragma once
/// @file
/// Reading a model's file into plain values, in a contained child process.

#include <filesystem>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

/// Reads a STEP file as read_step does, or one of Open CASCADE's own: shapes in .brep (text or
/// binary), a document in .xbf (BinXCAF). Which it is, its first bytes tell; a name that says
/// otherwise is noted.
///
/// A .brep knows neither unit nor parts: mm are taken and every solid is a part, called by the name
/// of the file, with a number where there are several. An .xbf has parts, names, assembly, unit and
/// stated sizes as a document has (model_of_document in occt.hpp); other units are turned into mm,
/// without the sizes then.
///
/// Contained as read_step is. What arrives of these formats can not be held against what their text
/// declares: damage that hits a number only is not seen.
/// @param completeness  as for read_step; of .xbf also for what Open CASCADE says it leaves out.
/// @throws Error as read_step; unreadable also for a document of another format.
[[nodiscard]] SPOTBLUE_EXPORT Model read_model(const std::filesystem::path& file,
                                               const ReadLimits& limits, Completeness completeness);

/// Whether a file is a model that read_model reads and no job file, by its first bytes, or by its
/// name where it cannot be read: the error that reading it gives is then the right one.
[[nodiscard]] SPOTBLUE_EXPORT bool is_model_file(const std::filesystem::path& file);

/// Reads AP203, AP214 or AP242 in any length unit; everything arrives in mm.
///
/// The text is scanned first and refused when absurd; Open CASCADE then reads it in a child process
/// with limits on time and memory, so that no file can crash, hang or exhaust the caller.
///
/// @param completeness  all_or_error: a file from which fewer products, occurrences, solids or
/// faces
///                      arrive than its text declares is refused by name of what is missing;
///                      accept_partial: what is missing is listed in the notes.
/// @throws Error file_access (missing, unreadable), unreadable (no STEP, damaged, too deep, too
///         large, Open CASCADE crashed, out of time or memory, no solid), incomplete (something
///         missing), stopped, system.
///
/// Forks: safe from any thread, but not while another thread holds locks of Open CASCADE.
[[nodiscard]] SPOTBLUE_EXPORT Model read_step(const std::filesystem::path& file,
                                              const ReadLimits& limits, Completeness completeness);

}  // namespace spotblue
