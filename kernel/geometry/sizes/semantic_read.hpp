#pragma once
// The sizes a file states, on the features they are stated for, and what is doubtful about them.

#include "geometry/tree/product_tree.hpp"
#include "geometry/tree/step_reader.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Whether the text of a file has any; so that files without pay nothing.
[[nodiscard]] bool states_sizes(std::string_view text);

// Fills model.semantic_sizes and adds to its notes. The model's products are the tree's parts, in
// the same order, their features found and named.
void add_semantic_sizes(const StepReader& reader, const Tree& tree, Model& model);

}  // namespace spotblue
