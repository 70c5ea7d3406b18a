#pragma once
/// @file
/// Everything that can be seen on a model without a job file.

#include <filesystem>
#include <limits>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/geometry/clash.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/read.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue {

struct LookSettings {
  SeatSettings seats;
  ReadLimits limits;
  Completeness completeness = Completeness::all_or_error;
  /// Wall time for all of it, s, more than 0; what is not looked at by then is told.
  double seconds = std::numeric_limits<double>::infinity();
};

/// Wall time of each stage, s.
struct LookSeconds {
  double read = 0.0;      ///< scan, child process, kernel parse and transfer
  double features = 0.0;  ///< feature extraction in the child and hand-over
  double seats = 0.0;
  double clash = 0.0;
  double total = 0.0;
};

struct Look {
  Model model;
  Seats seats;
  ClashReport clash;
  LookSettings settings;
  LookSeconds seconds;
  /// What settings.seconds left no time for: whether it is well is not known. Parts by id, pairs as
  /// "A and B", or the file where reading it was not done. Empty when all was looked at.
  std::vector<Note> not_looked_at;
};

/// Reads the file and finds parts, features, centre lines, seats, threads and clashes.
///
/// Ends within settings.seconds and one more, with what was found until then.
/// @throws Error as read_model.
[[nodiscard]] SPOTBLUE_EXPORT Look look(const std::filesystem::path& file,
                                        const LookSettings& settings);

/// Finds the same on a model that is in memory already.
[[nodiscard]] SPOTBLUE_EXPORT Look look_at(Model model, const LookSettings& settings);

/// "Wheel: bore 44": the feature's name behind its product's id.
[[nodiscard]] SPOTBLUE_EXPORT std::string feature_id(const Model& model, const FeatureRef& feature);

}  // namespace spotblue
