#pragma once
// Names of features that a person can say and that survive a re-export.

#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Names every feature of the product: "bore 44", "outside 30 @ 12", "face 60", "slot 8 #2".
void name_features(Product& product);

}  // namespace spotblue
