#pragma once
// What the STEP file's own stated sizes want of features and seats, where the job says nothing.

#include <deque>
#include <map>
#include <optional>
#include <set>
#include <string>

#include "group/match/pair_book.hpp"
#include "spotblue/geometry/look.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

/// A size stated for one feature of one occurrence, as a diameter or a width.
struct StatedWant {
  const SemanticSize* size = nullptr;
  Limits limits;
  std::optional<Length> nominal;
  std::string text;   ///< "H7"; empty where the size has limits
  std::string basis;  ///< "ISO 286-1:2010, 44 H7; stated in the model (#120)"
};

struct SemanticWants {
  std::set<Subject> left_to_job;  ///< features the job speaks of: there it wins
  /// Of features the job leaves alone; sound sizes only.
  std::map<Subject, StatedWant> sizes;
  /// Of pairs of such features that make a seat; what a DeclaredJob's fits may point into.
  std::deque<FitWant> fits;
};

[[nodiscard]] StatedWant stated_want(const SemanticSize& size);

/// The fit that two stated sizes make.
[[nodiscard]] FitWant stated_fit(const StatedWant& hole, const StatedWant& shaft);

}  // namespace spotblue
