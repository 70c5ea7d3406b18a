#pragma once
// The product tree of shapes that a host program holds in memory: an XDE document, or shapes by
// name.

#include <TDF_Label.hxx>
#include <TopoDS_Shape.hxx>
#include <string>
#include <utility>
#include <vector>

#include "geometry/product_tree.hpp"

namespace spotblue {

struct DocumentTree {
  Tree tree;
  std::vector<std::string> labels;  // entry of each part's label: "0:1:1:2"
};

// "0:1:1:2"
[[nodiscard]] std::string entry_of(const TDF_Label& label);

// Throws Error bad_input when the document has lengths that are no mm or a component is scaled.
[[nodiscard]] DocumentTree read_document_tree(const TDF_Label& main);

// A shape used under several names is one part, called by the first of them.
// Throws Error bad_input when a shape is null, holds no solid or is scaled.
[[nodiscard]] Tree tree_of_shapes(
    const std::vector<std::pair<std::string, TopoDS_Shape>>& named_shapes);

}  // namespace spotblue
