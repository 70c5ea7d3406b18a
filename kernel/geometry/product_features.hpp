#pragma once
// A product's features, box and volume from its shape, as read and unrepaired.

#include <TopoDS_Shape.hxx>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Fills everything of `product` but id and name. Faces outside any solid are left out.
void analyse_shape(const TopoDS_Shape& shape, Product& product);

}  // namespace spotblue
