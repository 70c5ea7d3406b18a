#pragma once
// Whether a file with sizes added reads back as it was meant.

#include <string>
#include <vector>

#include "geometry/write/semantic_text.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// What of `before`, or of the sizes that were added to it, is not so in `after`, in words; empty
// when all is: parts, features and places to 1e-9, every usable size, and each added one on its
// feature within 1e-6 mm.
[[nodiscard]] std::string first_difference(const Model& before, const Model& after,
                                           const std::vector<PlacedSize>& added);

}  // namespace spotblue
