#pragma once
/// @file
/// How deep metal lies in metal: of the longest straight way through an overlap, taken each of
/// several ways, the least. Links Open CASCADE; runs in a contained child only.

#include <TopoDS_Shape.hxx>
#include <vector>

#include "spotblue/geometry/vector.hpp"

namespace spotblue::proof {

/// Ways through an overlap: all along one direction, or away from a line, wherever one is.
struct WaysThrough {
  std::vector<Direction> straight;
  std::vector<Line> away_from;
};

struct MetalDepth {
  double depth = 0.0;  ///< mm; 0 when no line of any way could be cut with the solid
  /// How far the solid goes square to that way, or along the line that it leads away from, mm.
  double length = 0.0;
};

/// A solid as points spread over it, off its edges, and as points that reach as far as it does.
struct SolidPoints {
  std::vector<Point> spread, corners;
};

/// Of each way the longest unbroken piece within the solid; of those the least.
///
/// The best of the points' lines is improved step by step, to about a millionth of the length where
/// one such piece is the longest near it.
[[nodiscard]] MetalDepth metal_depth(const TopoDS_Shape& solid, const SolidPoints& points,
                                     const WaysThrough& ways);

}  // namespace spotblue::proof
