#pragma once
// Features of one product's shape.

#include <TopoDS_Shape.hxx>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Fills box, faces, solids, volume, closed and all features of a product whose id and name are set.
void analyse_shape(const TopoDS_Shape& shape, Product& product);

}  // namespace spotblue
