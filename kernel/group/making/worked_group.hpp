#pragma once
// What the parts of a job do to each other, as the checks take it.

#include <vector>

#include "group/axial/body_plays.hpp"
#include "group/joints/groups.hpp"
#include "group/match/declared.hpp"
#include "group/rings/surface_sizes.hpp"
#include "group/turning/bearings.hpp"
#include "group/turning/thrust_faces.hpp"
#include "group/turning/turns.hpp"
#include "spotblue/group/group.hpp"

namespace spotblue {

struct WorkedGroup {
  DeclaredJob declared;
  Groups joints;
  Turns turns;
  std::vector<SurfaceSizes> surfaces;  ///< by radial seat
  Running running;
  std::vector<ThrustFace> thrust_faces;
  BodyPlays plays;  ///< empty where not all was looked at
};

/// Points into the job and the look that were declared.
/// @throws Error as make_group, and stopped when the time or memory given is up.
[[nodiscard]] WorkedGroup work_out(DeclaredJob declared);

/// The same as values for whoever asks.
[[nodiscard]] Group group_of(const WorkedGroup& worked);

}  // namespace spotblue
