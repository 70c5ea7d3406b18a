#pragma once
/// @file
/// The faces of a part in the half plane of an axis: radius r over station z.

#include <limits>
#include <vector>

#include "geometry/faces/face_bounds.hpp"

namespace spotblue::proof {

/// The image of a face: between radii that change evenly from `z.low` to `z.high`.
struct Image {
  Interval z;
  double low_first = 0.0, low_last = 0.0;    ///< least radius at z.low and z.high
  double high_first = 0.0, high_last = 0.0;  ///< greatest radius there
  bool wall = false;           ///< turned about the axis: at every z there is surface at some angle
  Side side = Side::internal;  ///< of a wall
};

/// The images of all faces of the part about a line given in the part's own frame. Faces that stay
/// farther from it than `reach` are one image, so that a plate with thousands of holes costs little
/// about each of them.
[[nodiscard]] std::vector<Image> images_about(
    const FaceBounds& part, const Line& axis,
    double reach = std::numeric_limits<double>::infinity());

}  // namespace spotblue::proof
