#pragma once
// The product tree of shapes that a host program holds in memory: an XDE document, or shapes by
// name.

#include <TDF_Label.hxx>
#include <TopoDS_Shape.hxx>
#include <string>
#include <utility>
#include <vector>

#include "geometry/tree/product_tree.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

struct DocumentTree {
  Tree tree;
  std::vector<std::string> labels;  // by the tree's parts, the entry of the label: "0:1:1:2"
  std::string unit;                 // of the document's lengths: "mm", "inch"; empty: none named
  double mm_per_unit = 1.0;
};

// What to do with a document whose lengths are no mm: its shapes turned into mm are other shapes,
// on which nothing of the document can be found again.
enum class OtherLengths { refused, turned_into_mm };

struct DocumentReading {
  OtherLengths other_lengths = OtherLengths::refused;
  double most_occurrences = ReadLimits{}.occurrences;  // more than this is refused
  int nesting_depth = ReadLimits{}.nesting_depth;      // of assemblies, likewise
};

// "0:1:1:2"
[[nodiscard]] std::string entry_of(const TDF_Label& label);

// Throws Error bad_input when the document has lengths that are no mm, or no unit of lengths at
// all, or a component is scaled; unreadable when it has too many parts, an assembly contains itself
// or is nested too deep, or a component has no place.
[[nodiscard]] DocumentTree read_document_tree(const TDF_Label& main,
                                              const DocumentReading& how = {});

// A shape used under several names is one part, called by the first of them, made clean; one that
// has none is "Part 3". Throws Error bad_input when a shape is null, holds no solid or is scaled;
// unreadable when it unfolds without end or to more than ReadLimits allow.
[[nodiscard]] Tree tree_of_shapes(
    const std::vector<std::pair<std::string, TopoDS_Shape>>& named_shapes);

}  // namespace spotblue
