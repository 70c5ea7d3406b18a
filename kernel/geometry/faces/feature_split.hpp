#pragma once
// Equal journals and equal bores of one part with something between are features of their own.

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Divides each cylinder where, between two of its stretches, the part's own metal stands in the way
// of a mate: outside a shaft's surface, inside a hole's. A groove, a keyseat or air does not
// divide. Finished features only; before they are named.
void divide_cylinders(Product& product);

}  // namespace spotblue
