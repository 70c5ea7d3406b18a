#pragma once
// Loops and faces that a file wrote the wrong way round, put right by the rest of their shell.

#include <vector>

#include "geometry/surfaces/shell_facing.hpp"

namespace spotblue {

// Turns each loop of a plane face that is its outermost and runs as a hole does, or is a hole and
// runs as the outermost does; then each loop or face whose edges all run as in the faces that share
// them, where they must run against one another; and a normal that says the opposite of both.
// Returns how many were turned.
int settle_loops(std::vector<ReadFace>& faces);

// Area that a face's loops enclose by what its normal says: negative where one of the two is wrong.
// Of planes, cylinders and cones; 0 for others.
[[nodiscard]] double area_by_normal(const ReadFace& face);

}  // namespace spotblue
