#pragma once
// Shapes whose round and plane faces are written as B-splines or revolutions, made plain for the
// booleans of Open CASCADE, which go wrong and slow on such surfaces.

#include <TopoDS_Shape.hxx>

namespace spotblue {

// The shape with each face on a plane, cylinder or cone of its own kind that lies within 1e-6 mm of
// what is written; edges stay. What can not be made so stays as it is. The faces come without
// curves in their surfaces' parameters: to be healed.
[[nodiscard]] TopoDS_Shape with_plain_faces(const TopoDS_Shape& shape);

// Whether each face is written as a plane, cylinder, cone, sphere or torus.
[[nodiscard]] bool has_plain_faces(const TopoDS_Shape& shape);

}  // namespace spotblue
