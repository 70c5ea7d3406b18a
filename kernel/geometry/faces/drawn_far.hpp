#pragma once
// Parts drawn far from their own origin are brought near it before anything is measured on them.

#include <TopoDS_Shape.hxx>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// The middle of the box round the shape's corners; the origin for a shape that has none.
[[nodiscard]] Point middle_of_corners(const TopoDS_Shape& shape);

// That middle, in whole mm, of a shape that is drawn far from the origin; else the origin.
[[nodiscard]] Point drawn_at(const TopoDS_Shape& shape);

// The shape moved so that `origin` comes to lie at the origin, with curves and surfaces of its own;
// the shape itself where nothing is to be moved.
[[nodiscard]] TopoDS_Shape brought_near(const TopoDS_Shape& shape, Point origin);

// Where a part of this product is that was placed as it is drawn.
[[nodiscard]] Frame place_near(const Frame& as_drawn, const Product& product);

}  // namespace spotblue
