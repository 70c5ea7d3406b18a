#pragma once
// Free-form faces that are cylinders no longer of one size: oval, or bell-mouthed.

#include <TopoDS_Face.hxx>
#include <optional>
#include <vector>

#include "spotblue/geometry/model.hpp"

namespace spotblue {

struct WornSurface {
  Line axis;  // of the cylinder that lies nearest
  Side side = Side::external;
  SurfaceSource source = SurfaceSource::bspline;
  std::vector<DiameterAt>
      sizes;  // twice the least and the greatest distance from the axis, ascending
};

// Nothing for a surface that is no cylinder even by and large, or whose lines across the axis are
// not its own parameters' lines.
[[nodiscard]] std::optional<WornSurface> worn_surface(const TopoDS_Face& face);

}  // namespace spotblue
