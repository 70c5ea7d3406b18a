#pragma once
// Names of features by their sizes and places alone, whoever drew them.

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// The direction or its opposite: the one whose largest component is positive.
[[nodiscard]] Direction forward(Direction d);

// The middle of the rectangle that bounds a face's outline.
[[nodiscard]] Point face_centre(const Plane& plane);

// Gives every feature of the product its sized name: "bore 44", "outside 30 @ 12", "face 60",
// "slot 8 #2".
void name_by_size(Product& product);

}  // namespace spotblue
