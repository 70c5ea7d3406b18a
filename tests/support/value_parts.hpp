#pragma once
/// @file
/// Parts as the plain values that reading a file would give, built from numbers, without Open
/// CASCADE.

#include <utility>
#include <vector>

#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue::test {

/// A corner of the half section of a turned part: radius and station on z.
struct SectionCorner {
  double r = 0.0, z = 0.0;
};

/// A part turned about z; corners run with the material on their left (r to the right, z up).
[[nodiscard]] Product turned_part(const std::vector<SectionCorner>& section);
/// A plain ring, or a bar when inner = 0.
[[nodiscard]] Product ring_part(double inner, double outer, double from, double to);

struct BlockHole {
  double x = 0.0, y = 0.0, diameter = 0.0;
};
/// A block along the axes with through holes along z.
[[nodiscard]] Product block_part(Point low, Point high, const std::vector<BlockHole>& holes = {});
/// A hexagonal bar about z, across flats.
[[nodiscard]] Product hexagon_part(double flats, double from, double to);
/// Adds the faces of one part to another: for parts that touch at a whole face both keep.
void join(Product& part, const Product& other);

[[nodiscard]] Frame shifted(double x, double y, double z);
/// A turn by `angle` about `axis` through the origin.
[[nodiscard]] Frame rotated(Direction axis, double angle);

/// Occurrences of the products, one each, in the given frames.
[[nodiscard]] Model placed_model(const std::vector<std::pair<Product, Frame>>& parts);

}  // namespace spotblue::test
