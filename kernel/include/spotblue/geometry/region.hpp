#pragma once
/// @file
/// Plane regions bounded by straight lines and circular arcs, with exact areas; region_overlay.hpp
/// has what two share, region_inner.hpp points inside. Used for the outlines of plane faces and for
/// what two of them share.

#include <cstddef>
#include <vector>

#include "spotblue/base/export.hpp"

namespace spotblue {

struct Point2 {
  double u = 0.0, v = 0.0;
};
constexpr void describe(auto& fields, const Point2*) {
  fields.value("Point2", "A point in a plane's own coordinates.")
      .member("u", &Point2::u, "mm")
      .member("v", &Point2::v, "mm");
}

struct Edge2 {
  Point2 from, to;
  double sweep = 0.0;
  Point2 centre;
  double radius = 0.0;
};
constexpr void describe(auto& fields, const Edge2*) {
  fields
      .value("Edge2",
             "A straight or circular edge; the region lies to its left as it runs from start to "
             "end.")
      .member("start", &Edge2::from, "where it begins")
      .member("end", &Edge2::to, "where it ends")
      .degrees("sweep_deg", &Edge2::sweep,
               "0: straight; else signed, positive counter-clockwise; a full circle ends where it "
               "begins and sweeps 360 either way")
      .member("centre", &Edge2::centre, "of an arc")
      .member("radius_mm", &Edge2::radius, "of an arc");
}

struct Region {
  std::vector<Edge2> edges;
  bool exact = true;
};
constexpr void describe(auto& fields, const Region*) {
  fields.value("Region", "A bounded plane region: closed loops of directed edges.")
      .member("edges", &Region::edges, "in any order, holes included")
      .member("exact", &Region::exact,
              "false where an edge of the model was neither line nor circle and stands here as "
              "short chords");
}

struct Reach {
  double least = 0.0, greatest = 0.0;
};
constexpr void describe(auto& fields, const Reach*) {
  fields.value("Reach", "Least and greatest distance of a region's points from some point.")
      .member("least_mm", &Reach::least, "0 where the point lies inside")
      .member("greatest_mm", &Reach::greatest, "of the farthest point");
}

struct Extent2 {
  Point2 low, high;
};
constexpr void describe(auto& fields, const Extent2*) {
  fields.value("Extent2", "The box around a region, sides along u and v.")
      .member("low", &Extent2::low, "mm")
      .member("high", &Extent2::high, "mm");
}

struct PlaneMap {
  Point2 origin;
  double uu = 1.0, uv = 0.0, vu = 0.0, vv = 1.0;
};
constexpr void describe(auto& fields, const PlaneMap*) {
  fields
      .value("PlaneMap",
             "Takes one plane's coordinates to another's: u' = origin.u + uu u + uv v, v' = "
             "origin.v + vu u + vv v. The matrix must be orthogonal; a determinant of -1 looks at "
             "the plane from behind.")
      .member("origin", &PlaneMap::origin, "mm")
      .member("uu", &PlaneMap::uu, "u' of u")
      .member("uv", &PlaneMap::uv, "u' of v")
      .member("vu", &PlaneMap::vu, "v' of u")
      .member("vv", &PlaneMap::vv, "v' of v");
}

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
