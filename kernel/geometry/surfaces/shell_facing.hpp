#pragma once
// Which way a shell's faces look: out of what the shell encloses, or into it.

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "geometry/surfaces/edge_curve.hpp"
#include "geometry/surfaces/face_surface.hpp"
#include "geometry/surfaces/flux.hpp"
#include "geometry/surfaces/worn_fit.hpp"

namespace spotblue {

// A place on a free-form surface and the tangents along its two parameters; u x v points to the
// surface's front, which the face's side may turn over.
struct SurfaceSlope {
  Point at, u, v;
};

// A face as it was read: its surface with the material's side, and its edges.
struct ReadFace {
  FaceSurface surface;
  std::vector<EdgeCurve> edges;
  std::vector<std::size_t> loops;    // where each of the file's loops begins in `edges`
  std::optional<WornSurface> worn;   // of a free-form face that is a worn cylinder
  Box box;                           // of a free-form face only, which may bulge past its edges
  std::vector<SurfaceSlope> slopes;  // of a free-form face only
  Flux flux;                         // its share of three times the volume
};

// 1 when the material is inside (a solid's outer shell), -1 when it is outside (a void's shell).
// Told by the outermost faces' own side, which one face of doubtful share can't spoil; by the sum
// of the shares only where the outermost faces are round or free-form.
[[nodiscard]] int shell_facing(std::span<const ReadFace> faces);

// The same face with its material on the other side.
void turn_over(ReadFace& face);

}  // namespace spotblue
