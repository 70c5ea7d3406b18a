#pragma once
/// @file
/// A copy of a STEP file that also states sizes on the faces they belong to, so that the next
/// program can read them (ISO 10303-47, in an AP242 file).

#include <filesystem>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/unit.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/semantic_size.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

struct SizeToWrite {
  std::string product;
  std::string feature;
  double nominal_mm = 0.0;
  std::string tolerance_class;
  std::optional<SizeLimits> deviations;
};
constexpr void describe(auto& fields, const SizeToWrite*) {
  fields
      .value("SizeToWrite",
             "A size to be stated for every face of one feature: a class or deviations.")
      .member("product", &SizeToWrite::product, "id of the product")
      .member("feature", &SizeToWrite::feature,
              "its name, \"bore\", or its sized name, \"bore 44\", \"slot 8\"")
      .member("nominal_mm", &SizeToWrite::nominal_mm, "more than 0; a diameter or a width")
      .member("tolerance_class", &SizeToWrite::tolerance_class,
              "\"H7\", \"s6\": ISO 286-1, any letter and grade it has; or empty")
      .pair("deviations_mm", &SizeToWrite::deviations, "(lower, upper), signed, or None");
}

/// Writes `out` as `model` with the sizes added. Every entity of the file stays as it is, bytes and
/// numbers; AP203 files are first turned into AP242 by Open CASCADE, AP214 files are relabelled.
///
/// Grades that Open CASCADE's own writer left two too high are put right on the way. `out` appears
/// whole or not at all, once its draft has been read back and found to state what was meant.
///
/// @param unit  the values are written in; the geometry keeps the file's own.
/// @return remarks: sizes that the file states already and that were therefore not added again.
/// @throws Error as read_step; bad_input for an unknown product or feature (the nearest is named),
///         a nominal that is not positive, a class that is none or is of a hole on an outside (or
///         the reverse), neither or both of class and deviations, reversed deviations, two sizes
///         for one feature, a feature for which the file states another size already, an `out`
///         that is the model itself; file_access or system when `out` cannot be written;
///         open_cascade_failed when the draft does not read back as meant.
///
/// The file is read in a contained child process, as by read_step.
SPOTBLUE_EXPORT std::vector<Note> write_semantic_sizes(const std::filesystem::path& model,
                                                       const std::filesystem::path& out,
                                                       std::span<const SizeToWrite> sizes,
                                                       LengthUnit unit, const ReadLimits& limits);

}  // namespace spotblue
