#pragma once
// A product's solid as a boolean wants it.

#include <TopoDS_Shape.hxx>
#include <cstddef>

#include "geometry/occt/shape_store.hpp"

namespace spotblue {

// The product's shape, healed, with plain faces where it can be made so: see with_plain_faces.
// Throws Error open_cascade_failed when it can not be loaded or mended.
[[nodiscard]] TopoDS_Shape plain_solid(const ShapeStore& store, std::size_t product);

}  // namespace spotblue
