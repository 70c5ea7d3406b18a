#pragma once
// What a reader of a product should know besides its features.

#include <string>
#include <vector>

#include "geometry/faces/product_features.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Why nothing measured on the product can be relied on; empty where it can.
[[nodiscard]] std::string unsound(const Product& product, const Remarks& remarks);

// The remarks that are worth a note, what is unsound, and a volume that is not known well.
[[nodiscard]] std::vector<Note> notes_on(const Product& product, const Remarks& remarks);

}  // namespace spotblue
