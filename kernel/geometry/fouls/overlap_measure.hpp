#pragma once
/// @file
/// Solids taken apart and measured: points of them, volumes, and what two of them share.

#include <TopoDS_Shape.hxx>
#include <vector>

#include "geometry/fouls/exact_overlap.hpp"
#include "geometry/fouls/metal_depth.hpp"

namespace spotblue::proof {

/// The solids of a shape, one by one.
[[nodiscard]] std::vector<TopoDS_Shape> solids_of(const TopoDS_Shape& shape);
/// mm3, of a solid or several.
[[nodiscard]] double volume_of(const TopoDS_Shape& shape);
/// A few points of every face, no more than `most` in all, each with the outward normal.
struct FacePoint {
  Point at;
  Direction out;
};
[[nodiscard]] std::vector<FacePoint> face_points(const TopoDS_Shape& shape, std::size_t most);

/// Points spread over a solid and as far as it reaches, of a mesh within 0.02 mm.
[[nodiscard]] SolidPoints mesh_points(const TopoDS_Shape& shape);

/// How much more than the seats say is taken off: well over Open CASCADE's tolerance, so that
/// nothing coincides, and well under what anyone measures; mm.
inline constexpr double kGrown = 1e-5;

/// What the rings and bands hold, grown by kGrown, as solids; `reach` covers the shapes.
[[nodiscard]] std::vector<TopoDS_Shape> accounted_solids(const Accounted& accounted, double reach);

/// Volume, depth and a point inside of a non-empty solid.
[[nodiscard]] Overlap measured_overlap(const TopoDS_Shape& shared, const OpenPair& pair);

}  // namespace spotblue::proof
