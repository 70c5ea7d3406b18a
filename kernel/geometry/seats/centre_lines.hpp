#pragma once
// Centre lines: features on one axis, tied together from part to part by the seats between them.

#include <cstddef>
#include <vector>

#include "spotblue/geometry/seats.hpp"

namespace spotblue {

// Two features of two occurrences found on one line, and that line in the assembly.
struct AxisTie {
  FeatureRef a, b;  // cylinders or cones
  Line axis;
  double weight = 0.0;  // the heaviest tie of a group gives the centre line its place
};

struct CentreLines {
  List<CentreLine> lines;
  std::vector<CentreLineId> line_of;  // for each tie
};

// Cylinders and cones of one product on one line count as one.
[[nodiscard]] CentreLines centre_lines(const Model& model, const std::vector<AxisTie>& ties);

}  // namespace spotblue
