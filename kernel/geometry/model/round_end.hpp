#pragma once
// Half a cylinder that rounds an end of a keyseat, slot or key.

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Whether the cylinder, a feature of the same product, rounds an end of the width by half of it.
[[nodiscard]] bool rounds_end(const Product& product, const Width& width, const Cylinder& cylinder);

}  // namespace spotblue
