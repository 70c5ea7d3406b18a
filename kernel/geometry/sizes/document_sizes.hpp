#pragma once
// The sizes that an XDE document states as dimensions of its faces.

#include <TDF_Label.hxx>
#include <string>
#include <vector>

#include "geometry/sizes/semantic_settle.hpp"
#include "geometry/tree/product_tree.hpp"

namespace spotblue {

struct DocumentSizes {
  SettledSizes settled;
  std::vector<std::string> labels;  // entries of all dimensions; settled.from points into it
};

// The model's products are the tree's parts, analysed; the tree is the document's.
[[nodiscard]] DocumentSizes settled_in_document(const TDF_Label& main, const Tree& tree,
                                                const Model& model);

}  // namespace spotblue
