#pragma once
/// @file
/// One judged statement about the job, and the lot of them.

#include <string>
#include <variant>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/outcome.hpp"

namespace spotblue {

/// A named quantity of a finding. Numbers carry their unit in the key ("clearance_min_mm").
struct Quantity {
  std::string key;
  std::variant<double, std::string> value;
};

struct Finding {
  std::string id;    ///< "radial-1", "axial-3", "clash-2": stable for one model and job
  std::string kind;  ///< "radial fit", "axial gap", "width fit", "taper", "thread", "clash",
                     ///< "size", "plain bearing", "thrust face", "keep off", "make to suit",
                     ///< "unseen", "not judged"
  std::vector<std::string> about;  ///< feature or occurrence ids, hole before shaft
  Outcome outcome = Outcome::undecided;
  std::vector<Quantity> wanted;
  std::vector<Quantity> found;
  std::vector<Quantity> margin;  ///< positive inside the limits
  std::string basis;             ///< clause or formula: "ISO 286-1:2010, 44 H7/s6; ISO 14253-1"
  std::string advice;            ///< one line a machinist would give
  std::string caution;           ///< where the work can hurt someone; else empty
};

struct OutcomeCount {
  int conforming = 0, nonconforming = 0, undecided = 0;
};

[[nodiscard]] SPOTBLUE_EXPORT OutcomeCount count_outcomes(const std::vector<Finding>& findings);

}  // namespace spotblue
