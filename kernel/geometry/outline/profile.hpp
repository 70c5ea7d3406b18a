#pragma once
/// @file
/// Parts seen as what they occupy in the half plane of an axis: radius r over station z.
///
/// Every face maps to an image there. A circle (r, z) about the axis that meets no face lies wholly
/// in material or wholly in air, so between the images each cell is one or the other; which one is
/// told by the side of a surface turned about the axis that bounds the cell, or by a point of the
/// cell outside the part's box. Whatever is not proved air counts as occupied.

#include <span>
#include <vector>

#include "geometry/faces/face_bounds.hpp"
#include "geometry/outline/profile_images.hpp"

namespace spotblue::proof {

/// A stretch of radii, at the lower and the upper end of a slab.
struct Sector {
  double low_first = 0.0, low_last = 0.0;
  double high_first = 0.0, high_last = 0.0;
};

/// What a part holds of a slab square to the axis, ascending.
struct Slab {
  Interval z;
  std::vector<Sector> occupied;  ///< whatever is not proved air
  std::vector<Sector> filled;    ///< proved material all the way round
};

/// The slab of the part over `z`; images that reach only part of it count over all of it.
[[nodiscard]] Slab slab_of(const FaceBounds& part, const Line& axis, std::span<const Image> images,
                           Interval z);

/// What the part occupies in the slab `z`, ascending; conservative. Images that reach only part of
/// the slab count over all of it.
[[nodiscard]] std::vector<Sector> occupied(const FaceBounds& part, const Line& axis,
                                           std::span<const Image> images, Interval z);

/// How many stations are looked at. Choice of this program, no source.
inline constexpr std::size_t kMostStations = 400;

/// Stations where images begin and end, inside `window`, ascending and apart; no more than `most`.
[[nodiscard]] std::vector<double> stations(std::span<const Image> a, std::span<const Image> b,
                                           Interval window, std::size_t most);

}  // namespace spotblue::proof
