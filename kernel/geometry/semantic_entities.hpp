#pragma once
// The sizes that a parsed STEP file states, from its entities: the kernel's own document loses
// signs, units and grades. Lengths in mm.

#include <TopoDS_Shape.hxx>
#include <string>
#include <vector>

#include "geometry/step_kernel.hpp"
#include "spotblue/geometry/semantic_size.hpp"

namespace spotblue {

struct StatedSize {
  SemanticSize size;  // without product and features; limits not yet made from a class
  std::string remark;
  std::vector<TopoDS_Shape> faces;  // it is stated for, as the kernel made them
  int other_items = 0;              // edges, points and the like it is stated for
};

struct StatedSizes {
  std::vector<StatedSize> sizes;  // in the order of their entities
  int distances = 0;              // between two features; not read
  int angles = 0;                 // of one feature; not read
};

[[nodiscard]] StatedSizes stated_sizes(const StepKernel& kernel);

}  // namespace spotblue
