#pragma once
// Two opposite parallel faces of one product that make a slot or a key.

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Fills product.widths from product.planes: each plane with the nearest opposite one it faces
// (internal) and the nearest one at its back (external), where their outlines overlap.
void find_widths(Product& product);

}  // namespace spotblue
