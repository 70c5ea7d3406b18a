#pragma once
/// @file
/// A size in each state of a part: as made, after everything is pressed, and when running.

#include <optional>

#include "spotblue/base/export.hpp"
#include "spotblue/base/interval.hpp"
#include "spotblue/group/sentence.hpp"

namespace spotblue {

struct SizeStates {
  Interval free;
  std::optional<Interval> assembled;
  std::optional<Interval> running;
  Saying unknown;
};
constexpr void describe(auto& fields, const SizeStates*) {
  fields
      .value("SizeStates",
             "A diameter in each state: all that it may be by its limits or its measurement, by "
             "those of the parts pressed on or into its own, and by the weakest and the strongest "
             "wall that these may have.")
      .member("free_mm", &SizeStates::free, "as made or measured, at the bench")
      .member("assembled_mm", &SizeStates::assembled,
              "after everything is pressed, at the bench; None where that is not known")
      .member("running_mm", &SizeStates::running,
              "assembled, at running temperature; None where that is not known; as of any material "
              "where none is given")
      .member("unknown", &SizeStates::unknown,
              "why a state is not known, or no closer: \"no material is given for Bush\"; else "
              "empty");
}

}  // namespace spotblue
