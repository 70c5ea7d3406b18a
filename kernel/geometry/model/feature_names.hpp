#pragma once
// Names of features that a person can say and that no change of a size changes.

#include <string>
#include <string_view>

#include "spotblue/geometry/feature_names.hpp"

namespace spotblue {

// Names every feature of the product: as its maker did ("journal") where the file gives its faces a
// name that nothing else of the product has, else by kind and order ("bore", "outside 3"), counted
// along each direction in turn, from the low end. Gives each its sized name too.
void name_features(Product& product);

// What a file calls a face, made clean; empty when no person can have given it: "NONE", a number,
// "no 26228".
[[nodiscard]] std::string name_by_a_maker(std::string_view raw);

}  // namespace spotblue
