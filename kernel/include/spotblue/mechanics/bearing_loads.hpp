#pragma once
/// @file
/// What the bearings of a part carry, by statics from forces across its axis.

#include <span>
#include <string>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/length.hpp"
#include "spotblue/base/words.hpp"

namespace spotblue {

struct StationForce {
  Length at;
  double force_n = 0.0;
};
constexpr void describe(auto& fields, const StationForce*) {
  fields.value("StationForce", "A force across the axis; all of one sum in one plane.")
      .member("at_mm", &StationForce::at, "where along the axis, from any one point of it")
      .member("force_n", &StationForce::force_n,
              "N; one sense across the axis is positive, the other negative");
}

/// How more than two bearings share: nobody says, or all alike by declaration.
enum class LoadSharing { by_statics, evenly };
constexpr auto describe(const LoadSharing*) {
  return words("How bearings share a load.", "by statics", "evenly");
}

struct BearingLoads {
  std::vector<double> loads_n;
  double moment_nm = 0.0;
  std::string unknown;
};
constexpr void describe(auto& fields, const BearingLoads*) {
  fields.value("BearingLoads", "What each bearing carries.")
      .member("loads_n", &BearingLoads::loads_n,
              "N, by bearing, positive where it carries positive forces: with the load overhung, "
              "the far one's is negative; empty where it is not known")
      .member("moment_nm", &BearingLoads::moment_nm,
              "N m, what forces across the axis leave unbalanced: a lone bearing takes it by its "
              "edges; positive where positive forces act farther along the axis than the bearing")
      .member("unknown", &BearingLoads::unknown,
              "why the loads are not known: more than two bearings; else empty");
}

/// Forces and moments balanced, the part taken as stiff and each bearing at the middle of its
/// length. One bearing takes all and the moment about it; two take both exactly, overhung or not;
/// of more, statics does not say, unless they share evenly by declaration.
///
/// @param forces    any number, in one plane.
/// @param bearings  where each is along the axis; one or more, two by statics apart.
/// @throws Error bad_input naming the argument that is not finite, no bearing, or two at one place.
/// Source: sum of forces and of moments is 0 (any book of statics); printed examples in
/// tests/reference/beam_examples.csv.
[[nodiscard]] SPOTBLUE_EXPORT BearingLoads bearing_loads(std::span<const StationForce> forces,
                                                         std::span<const Length> bearings,
                                                         LoadSharing sharing);

}  // namespace spotblue
