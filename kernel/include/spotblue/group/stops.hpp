#pragma once
/// @file
/// Which faces stop which parts along a line, and the play that they leave.

#include <optional>

#include "spotblue/base/interval.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue {

/// Two faces that can meet, of parts that move along the line without each other.
struct GroupStop {
  FeatureRef a, b;
  CentreLineId centre_line{};
  double gap = 0.0;
  std::optional<Interval> play;
  std::optional<Interval> running;
};
constexpr void describe(auto& fields, const GroupStop*) {
  fields
      .value("GroupStop",
             "Two faces that can meet, of parts that move along the line without each other.")
      .member("a", &GroupStop::a, "face that looks one way along the line")
      .member("b", &GroupStop::b, "face that looks the other way, and stops it")
      .member("centre_line", &GroupStop::centre_line, "number, from 0")
      .member("gap_mm", &GroupStop::gap, "as modelled; negative where the parts overlap")
      .member(
          "play_mm", &GroupStop::play,
          "all that the play may be which this stop ends as modelled, by its parts' lengths and "
          "how they may be set; None where it ends none")
      .member("running_mm", &GroupStop::running,
              "the same at running temperature; None where all stays at the bench's or a material "
              "is not known");
}

}  // namespace spotblue
