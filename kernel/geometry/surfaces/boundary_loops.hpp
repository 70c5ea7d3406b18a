#pragma once
// The closed loops that a face's edges make, without the seams that run there and back.

#include <span>
#include <vector>

#include "geometry/surfaces/edge_curve.hpp"

namespace spotblue {

// Each edge of a loop begins where the one before it ends.
using EdgeLoop = std::vector<const EdgeCurve*>;

// The loops of a face; `complete` is false when some edges do not close, as on a damaged face.
struct EdgeLoops {
  std::vector<EdgeLoop> loops;
  bool complete = true;
};

[[nodiscard]] EdgeLoops boundary_loops(std::span<const EdgeCurve> edges);

}  // namespace spotblue
