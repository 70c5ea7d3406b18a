#pragma once
/// @file
/// A first job file for a model: all that was found, nothing assumed.

#include <string>

#include "spotblue/base/export.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/geometry/look.hpp"

namespace spotblue {

/// Text of a job file that read_job and check accept as it stands.
///
/// Every part is listed, and every seat; the fits that the modelled sizes would satisfy stand
/// beside each as comments, to be chosen from. Nothing is declared, so every seat stays undecided.
/// What was not looked at is named in comments at its head, or the first of it.
/// @param model_path  written as given; relative to where the job file will lie.
[[nodiscard]] SPOTBLUE_EXPORT std::string draft_job(const Look& look, const std::string& model_path,
                                                    LengthUnit unit);

}  // namespace spotblue
