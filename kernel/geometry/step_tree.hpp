#pragma once
// The product tree of a transferred file.

#include <vector>

#include "geometry/product_tree.hpp"
#include "geometry/step_kernel.hpp"
#include "geometry/step_mapped.hpp"

namespace spotblue {

// Linear in the number of entities and occurrences.
// What the file's text tells that the kernel does not follow.
struct TextLinks {
  std::vector<MappedUsage> mapped;  // components that no usage names
  std::vector<int> outside;         // product definitions whose shapes are in other files
};
[[nodiscard]] Tree read_tree(const StepKernel& kernel, const TextLinks& links);

}  // namespace spotblue
