#pragma once
/// @file
/// Parts seen as what they occupy in the half plane of an axis: radius r over station z.
///
/// Every face maps to an image there. A circle (r, z) about the axis that meets no face lies wholly
/// in material or wholly in air, so between the images each cell is one or the other; which one is
/// told by the side of a surface turned about the axis that bounds the cell, or by a point of the
/// cell outside the part's box. Whatever is not proved air counts as occupied.

#include <limits>
#include <span>
#include <vector>

#include "face_bounds.hpp"

namespace spotblue::proof {

/// The image of a face: between radii that change evenly from `z.low` to `z.high`.
struct Image {
  Span z;
  double low_first = 0.0, low_last = 0.0;    ///< least radius at z.low and z.high
  double high_first = 0.0, high_last = 0.0;  ///< greatest radius there
  bool wall = false;           ///< turned about the axis: at every z there is surface at some angle
  Side side = Side::internal;  ///< of a wall
};

/// A stretch of radii, at the lower and the upper end of a slab.
struct Sector {
  double low_first = 0.0, low_last = 0.0;
  double high_first = 0.0, high_last = 0.0;
};

/// What a part holds of a slab square to the axis, ascending.
struct Slab {
  Span z;
  std::vector<Sector> occupied;  ///< whatever is not proved air
  std::vector<Sector> filled;    ///< proved material all the way round
};

/// The images of all faces of the part about a line given in the part's own frame. Faces that stay
/// farther from it than `reach` are one image, so that a plate with thousands of holes costs little
/// about each of them.
[[nodiscard]] std::vector<Image> images_about(
    const FaceBounds& part, const Line& axis,
    double reach = std::numeric_limits<double>::infinity());

/// The slab of the part over `z`; images that reach only part of it count over all of it.
[[nodiscard]] Slab slab_of(const FaceBounds& part, const Line& axis, std::span<const Image> images,
                           Span z);

/// What the part occupies in the slab `z`, ascending; conservative. Images that reach only part of
/// the slab count over all of it.
[[nodiscard]] std::vector<Sector> occupied(const FaceBounds& part, const Line& axis,
                                           std::span<const Image> images, Span z);

/// Stations where images begin and end, inside `window`, ascending and apart; no more than `most`.
[[nodiscard]] std::vector<double> stations(std::span<const Image> a, std::span<const Image> b,
                                           Span window, std::size_t most);

}  // namespace spotblue::proof
