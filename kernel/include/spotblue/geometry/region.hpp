#pragma once
/// @file
/// Plane regions bounded by straight lines and circular arcs, with exact areas and intersections.
/// Used for the outlines of plane faces and for what two of them share.

#include <vector>

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

/// Area by Green's theorem, exact for lines and arcs; mm2. Negative for a region turned inside out.
[[nodiscard]] double area(const Region& region);
/// Whether the point lies inside; points within 1e-9 mm of the boundary may go either way.
[[nodiscard]] bool contains(const Region& region, Point2 p);
/// What both regions cover. Edges that run on one another are recognised within 1e-7 mm.
[[nodiscard]] Region intersect(const Region& a, const Region& b);
/// What `a` covers and `b` does not.
[[nodiscard]] Region subtract(const Region& a, const Region& b);
/// Least and greatest distance of the region's points from `from`, mm; {0, x} when it lies inside.
struct Reach {
  double least = 0.0, greatest = 0.0;
};
[[nodiscard]] Reach reach(const Region& region, Point2 from);
/// The full disc (counter-clockwise circle).
[[nodiscard]] Region disc(Point2 centre, double radius);

}  // namespace spotblue
