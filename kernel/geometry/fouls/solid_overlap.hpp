#pragma once
/// @file
/// Open CASCADE's boolean of two solids, its answer checked, cut and measured. Runs in a contained
/// child only: Open CASCADE may crash on what a file holds.

#include <TopoDS_Shape.hxx>

#include "geometry/fouls/exact_overlap.hpp"

namespace spotblue::proof {

/// What both solids share beyond what the pair accounts for. `b` is already in a's frame.
[[nodiscard]] Overlap solid_overlap(const TopoDS_Shape& a, const TopoDS_Shape& b,
                                    const OpenPair& pair);

/// The shape placed by the frame; mirrors are copied.
[[nodiscard]] TopoDS_Shape placed_shape(const TopoDS_Shape& shape, const Frame& frame);

}  // namespace spotblue::proof
