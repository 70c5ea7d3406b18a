#pragma once
/// @file
/// Everything that can be seen on a model without a job file.

#include <filesystem>
#include <functional>
#include <vector>

#include "spotblue/base/describe.hpp"
#include "spotblue/base/export.hpp"
#include "spotblue/geometry/foul.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/read.hpp"
#include "spotblue/geometry/seats.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

struct LookSeconds {
  double read = 0.0;
  double features = 0.0;
  double seats = 0.0;
  double fouls = 0.0;
  double total = 0.0;
};
constexpr void describe(auto& fields, const LookSeconds*) {
  fields.value("LookSeconds", "Wall time of each stage.")
      .member("read", &LookSeconds::read, "s; scan, child process, parse and transfer")
      .range(kFrom0)
      .member("features", &LookSeconds::features,
              "s; feature extraction in the child and hand-over")
      .range(kFrom0)
      .member("seats", &LookSeconds::seats, "s")
      .range(kFrom0)
      .member("fouls", &LookSeconds::fouls, "s")
      .range(kFrom0)
      .member("total", &LookSeconds::total, "s")
      .range(kFrom0);
}

struct Look {
  Model model;
  Seats seats;
  FoulReport fouls;
  LookSettings settings;
  LookSeconds seconds;
  std::vector<Note> not_looked_at;
  bool machine_lacked = false;
  double memory_mb = 0.0;
};

/// Whether all of the file arrived and was looked at: nothing is not_looked_at and no part of the
/// model is left out (Model::not_compared).
[[nodiscard]] SPOTBLUE_EXPORT bool is_whole(const Look& look);

constexpr void describe(auto& fields, const Look*) {
  fields.value("Look", "What was found on a model.")
      .member("model", &Look::model, "products, features and occurrences")
      .member("seats", &Look::seats, "where parts bear on each other")
      .member("fouls", &Look::fouls, "fouls and remarks of their search")
      .held(&Look::settings)
      .member("seconds", &Look::seconds, "wall time")
      .member("not_looked_at", &Look::not_looked_at,
              "what there was no time or memory for: whether it is well is not known. Parts by id, "
              "pairs as \"A and B\", or the file where reading it was not done, or for the rest of "
              "more than a thousand; empty when all was looked at")
      .member("machine_lacked", &Look::machine_lacked,
              "whether that is for want of the machine's memory and not of what was given")
      .member("memory_mb", &Look::memory_mb,
              "by how much the process grew, what reports will take counted in, 10^6 bytes")
      .derived(
          "whole", [](const Look& look) { return is_whole(look); },
          "whether all of the file arrived and was looked at");
}

/// Reads the file and finds parts, features, centre lines, seats, threads and fouls.
///
/// Ends within settings.seconds and one more, with what was found until then, and once the process
/// has grown by settings.limits.memory_mb or by what the machine has left: a seat or a foul counts
/// 1,000 bytes more than it takes here, for the reports. The reading child may take as much again,
/// children that compare solids what this process has left of it.
/// @throws Error as read_model.
[[nodiscard]] SPOTBLUE_EXPORT Look look(const std::filesystem::path& file,
                                        const LookSettings& settings);

/// Finds the same on a model that is in memory already.
[[nodiscard]] SPOTBLUE_EXPORT Look look_at(Model model, const LookSettings& settings);

/// Finds the same on the model that `make` returns, of a document or of shapes that it has; making
/// it counts into the time of the look.
/// @throws what `make` throws.
[[nodiscard]] SPOTBLUE_EXPORT Look look_at(const std::function<Model()>& make,
                                           const LookSettings& settings);

/// "Wheel: bore 44": the feature's name behind its product's id.
[[nodiscard]] SPOTBLUE_EXPORT std::string feature_id(const Model& model, const FeatureRef& feature);

}  // namespace spotblue
