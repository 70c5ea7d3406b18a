#pragma once
/// @file
/// Real solids for the foul tests and Open CASCADE's own boolean as the judge of what they share.

#include <TopoDS_Shape.hxx>
#include <random>
#include <utility>
#include <vector>

#include "spotblue/geometry/model.hpp"

namespace spotblue::test {

/// The half section (r, z), corners in order, turned about z.
[[nodiscard]] TopoDS_Shape turned_solid(const std::vector<std::pair<double, double>>& section);
[[nodiscard]] TopoDS_Shape bar_solid(double inner, double outer, double from, double to);
[[nodiscard]] TopoDS_Shape block_solid(Point low, Point high);
/// A flat key along x with round ends, its middle at the origin, its bottom at z = 0.
[[nodiscard]] TopoDS_Shape key_solid(double length, double width, double height, bool round);
[[nodiscard]] TopoDS_Shape cut_solid(const TopoDS_Shape& from, const TopoDS_Shape& tool);
[[nodiscard]] TopoDS_Shape moved_solid(const TopoDS_Shape& solid, const Frame& frame);

/// mm3 that both share: a boolean of this file's own, without any of the library's checks.
[[nodiscard]] double shared_volume(const TopoDS_Shape& a, const TopoDS_Shape& b);

/// One product and one occurrence each, analysed and with the solids in store.
[[nodiscard]] Model solid_model(const std::vector<std::pair<TopoDS_Shape, Frame>>& parts);

/// A solid of a random kind: stepped bar, ring, block with bores, drilled ring, keyed bar, key.
[[nodiscard]] TopoDS_Shape random_solid(std::mt19937& random);
[[nodiscard]] double between(std::mt19937& random, double low, double high);

}  // namespace spotblue::test
