#pragma once
// The product tree of a transferred file: parts with solids once each, and where they occur.

#include <TopoDS_Shape.hxx>
#include <TopoDS_TShape.hxx>
#include <cstddef>
#include <string>
#include <unordered_set>
#include <vector>

#include "geometry/step_kernel.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

struct TreePart {
  int entity = 0;  // of its product definition: 12 for #12
  std::string name;
  TopoDS_Shape shape;  // its solids: one solid, or a compound; rigidly placed within
};

struct Tree {
  std::vector<TreePart> parts;          // in the order they are met from the roots down
  std::vector<Occurrence> occurrences;  // product is an index into parts; id and box not yet set
  std::vector<int> unplaced;  // usages whose component has solids but came without a shape
  std::unordered_set<const TopoDS_TShape*>
      solids;  // all that are in parts, as the kernel made them
  std::vector<Note> notes;
};

// Linear in the number of entities and occurrences.
[[nodiscard]] Tree read_tree(const StepKernel& kernel);

}  // namespace spotblue
