#pragma once
// The product tree of a transferred file.

#include <vector>

#include "geometry/part21/step_mapped.hpp"
#include "geometry/tree/product_tree.hpp"
#include "geometry/tree/step_reader.hpp"

namespace spotblue {

// Linear in the number of entities and occurrences.
// What the file's text tells that Open CASCADE does not follow.
struct TextLinks {
  std::vector<MappedUsage> mapped;  // components that no usage names
  std::vector<int> outside;         // product definitions whose shapes are in other files
};
[[nodiscard]] Tree read_tree(const StepReader& reader, const TextLinks& links);

}  // namespace spotblue
