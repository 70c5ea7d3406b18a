#pragma once
/// @file
/// Plane regions bounded by straight lines and circular arcs, with exact areas; region_overlay.hpp
/// has what two share, region_inner.hpp points inside. Used for the outlines of plane faces and for
/// what two of them share.

#include <cstddef>
#include <vector>

#include "spotblue/base/export.hpp"

namespace spotblue {

/// A point in a plane's own coordinates, mm.
struct Point2 {
  double u = 0.0, v = 0.0;
};

/// A straight or circular edge; the region lies to its left as it runs from `from` to `to`.
struct Edge2 {
  Point2 from, to;
  /// 0 for a straight edge; otherwise the signed sweep in rad, positive counter-clockwise; a full
  /// circle has from == to and a sweep of +-2 pi.
  double sweep = 0.0;
  Point2 centre;        ///< of an arc
  double radius = 0.0;  ///< of an arc, mm
};

/// A bounded region: closed loops of directed edges in any order, holes included.
struct Region {
  std::vector<Edge2> edges;
  /// False where an edge of the model was neither line nor circle and stands here as short chords.
  bool exact = true;
};

/// Least and greatest distance of a region's points from some point, mm.
struct Reach {
  double least = 0.0, greatest = 0.0;
};

/// The box around a region, sides along u and v, mm.
struct Extent2 {
  Point2 low, high;
};

/// Takes one plane's coordinates to another's: u' = origin.u + uu u + uv v, v' = origin.v + vu u +
/// vv v. The matrix must be orthogonal; a determinant of -1 looks at the plane from behind.
struct PlaneMap {
  Point2 origin;
  double uu = 1.0, uv = 0.0, vu = 0.0, vv = 1.0;
};

/// Whether the region has no edge at all.
[[nodiscard]] SPOTBLUE_EXPORT bool is_empty(const Region& region);
/// Area by Green's theorem, exact for lines and arcs; mm2. Negative for a region turned inside out.
[[nodiscard]] SPOTBLUE_EXPORT double area(const Region& region);
/// The box around the region, exact for lines and arcs; {{0, 0}, {0, 0}} for an empty region.
[[nodiscard]] SPOTBLUE_EXPORT Extent2 extent(const Region& region);
/// Whether the point lies inside; points within 1e-9 mm of the boundary may go either way.
[[nodiscard]] SPOTBLUE_EXPORT bool contains(const Region& region, Point2 p);
/// {0, x} when `from` lies inside; {0, 0} for an empty region.
[[nodiscard]] SPOTBLUE_EXPORT Reach reach(const Region& region, Point2 from);
/// The region in another plane's coordinates, material still to the left of its edges.
[[nodiscard]] SPOTBLUE_EXPORT Region mapped(const Region& region, const PlaneMap& map);
/// The full disc (counter-clockwise circle); radius > 0, mm.
[[nodiscard]] SPOTBLUE_EXPORT Region disc(Point2 centre, double radius);

}  // namespace spotblue
