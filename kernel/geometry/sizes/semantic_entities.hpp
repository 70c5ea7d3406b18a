#pragma once
// The sizes that a parsed STEP file states, from its entities: Open CASCADE's own document loses
// signs, units and grades. Lengths in mm.

#include <TopoDS_Shape.hxx>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/tree/step_reader.hpp"
#include "spotblue/geometry/semantic_size.hpp"

namespace spotblue {

struct StatedSize {
  SemanticSize size;  // without product and features; limits not yet made from a class
  std::string remark;
  std::vector<TopoDS_Shape> faces;  // it is stated for, as Open CASCADE made them
  bool is_distance = false;         // from those faces to the far ones; else far_faces is empty
  std::vector<TopoDS_Shape> far_faces;
  int other_items = 0;  // edges, points and the like it is stated for
};

struct StatedSizes {
  std::vector<StatedSize> sizes;  // in the order of their entities
  int distances = 0;              // of kinds that are no size of a feature; not read
  int angles = 0;                 // not read
};

// Whether a distance of that name (ISO 10303-47, AP242) goes straight from face to face, as that
// across a slot does: "linear distance", "linear distance outer outer".
[[nodiscard]] bool is_plain_distance(std::string_view name);

[[nodiscard]] StatedSizes stated_sizes(const StepReader& reader);

}  // namespace spotblue
