#pragma once
// The product tree of a transferred file.

#include "geometry/product_tree.hpp"
#include "geometry/step_kernel.hpp"

namespace spotblue {

// Linear in the number of entities and occurrences.
[[nodiscard]] Tree read_tree(const StepKernel& kernel);

}  // namespace spotblue
