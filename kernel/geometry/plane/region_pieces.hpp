#pragma once
/// @file
/// Cuts the edges of two regions where they meet, so that every piece lies wholly inside, outside
/// or on the boundary of the other region.

#include <cstddef>
#include <vector>

#include "spotblue/geometry/region.hpp"

namespace spotblue {

/// Which of the two regions an edge is of.
enum class Owner : unsigned char { a, b };

struct OwnedEdge {
  Edge2 edge;
  Owner owner = Owner::a;
};

/// A stretch of an edge between two nodes; points within the tolerance of one another are one node.
struct Piece {
  Edge2 edge;
  std::size_t from = 0, to = 0;  ///< nodes
  Owner owner = Owner::a;
  Point2 middle;
  double length = 0.0;
};

struct Pieces {
  std::vector<Piece> pieces;
  std::size_t nodes = 0;  ///< node numbers are below this
};

Pieces cut_where_they_meet(const std::vector<OwnedEdge>& edges, double tolerance);

}  // namespace spotblue
