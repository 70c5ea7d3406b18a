#pragma once
// Flux through a free-form face, by adaptive integration over the surface's parameters.

#include <TopoDS_Face.hxx>

#include "spotblue/geometry/vector.hpp"

namespace spotblue {

// Three times the face's share of the volume, as face_flux, by Gauss-Kronrod. A copy of the face is
// measured whose edges' curves in the surface's parameters are made anew from those in space: what
// a file brings of them may be missing or, at a seam, the wrong way round; and mending the face
// itself would change its neighbours.
[[nodiscard]] double free_form_flux(const TopoDS_Face& face, Point origin);

}  // namespace spotblue
