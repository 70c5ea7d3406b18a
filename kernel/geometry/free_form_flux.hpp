#pragma once
// Flux through a free-form face, by integration over the surface's parameters.

#include <TopoDS_Face.hxx>

#include "spotblue/geometry/vector.hpp"

namespace spotblue {

// Three times the face's share of the volume, as face_flux, by Open CASCADE's own integration of a
// fixed order. It needs curves in the surface's parameters, which a file need not bring: then a
// repaired copy of the face is measured.
[[nodiscard]] double free_form_flux(const TopoDS_Face& face, Point origin);

}  // namespace spotblue
