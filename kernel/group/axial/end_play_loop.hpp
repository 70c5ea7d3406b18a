#pragma once
// The closed loop of lengths that leaves a group of parts its end play.

#include <optional>
#include <vector>

#include "group/axial/face_path.hpp"
#include "spotblue/geometry/axial_stops.hpp"

namespace spotblue {

/// A length of a loop and what it does to the play.
struct LoopLength {
  PathLength path;
  StackSense sense = StackSense::opens;
};

/// Walks round it: through the ground from where it stops the group on the way back to where it
/// stops it ahead, and the same way through everything that moves between.
/// @param back, ahead  the group's stops each way along the line, its own first; never empty.
/// @return nothing where no way leads from one face to the next.
[[nodiscard]] std::optional<std::vector<LoopLength>> loop_of(const std::vector<AxialStop>& back,
                                                             const std::vector<AxialStop>& ahead,
                                                             const FacePaths& paths,
                                                             const Line& line);

}  // namespace spotblue
