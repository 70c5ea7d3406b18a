#pragma once
// The product tree of shapes that a host program holds in memory: an XDE document, or shapes by
// name.

#include <TDF_Label.hxx>
#include <TopoDS_Shape.hxx>
#include <limits>
#include <string>
#include <utility>
#include <vector>

#include "geometry/product_tree.hpp"
#include "spotblue/base/error.hpp"

namespace spotblue {

struct DocumentTree {
  Tree tree;
  std::vector<std::string> labels;  // entry of each part's label: "0:1:1:2"
  std::string unit;                 // of the document's lengths: "mm", "inch"; empty: none named
  double mm_per_unit = 1.0;
};

// What to do with a document whose lengths are no mm: its shapes turned into mm are other shapes,
// on which nothing of the document can be found again.
enum class OtherLengths { refused, turned_into_mm };

struct DocumentReading {
  OtherLengths other_lengths = OtherLengths::refused;
  double most_occurrences = std::numeric_limits<double>::infinity();  // more than this is refused
};

// "0:1:1:2"
[[nodiscard]] std::string entry_of(const TDF_Label& label);

// Throws Error bad_input when the document has lengths that are no mm or a component is scaled;
// unreadable when it has too many parts or a component has no place.
[[nodiscard]] DocumentTree read_document_tree(const TDF_Label& main,
                                              const DocumentReading& how = {});

[[nodiscard]] Error too_many_parts(double most);

// A shape used under several names is one part, called by the first of them.
// Throws Error bad_input when a shape is null, holds no solid or is scaled.
[[nodiscard]] Tree tree_of_shapes(
    const std::vector<std::pair<std::string, TopoDS_Shape>>& named_shapes);

}  // namespace spotblue
