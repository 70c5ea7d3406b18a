#pragma once
/// @file
/// A job that says nothing but which model: what the STEP file itself states is all there is.

#include <filesystem>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

/// mm or inches, by the unit the file is written in.
[[nodiscard]] SPOTBLUE_EXPORT LengthUnit unit_of(const FileInfo& file);

/// A job for the model without any entry. check of it judges by the model's semantic sizes alone.
[[nodiscard]] SPOTBLUE_EXPORT Job bare_job(const std::filesystem::path& model, LengthUnit unit);

}  // namespace spotblue
