#pragma once
// Faces on one and the same surface become one feature, however the file has split them.

#include <span>

#include "geometry/surfaces/edge_curve.hpp"
#include "geometry/surfaces/face_surface.hpp"
#include "geometry/surfaces/worn_fit.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Whether a face's surface is that of the feature, on the same side of the material, within the
// product's uncertainty and what both lie off; of a plane's face any point of its edges.
[[nodiscard]] bool on_surface_of(const Cylinder& cylinder, const FaceSurface& surface,
                                 double uncertainty);
[[nodiscard]] bool on_surface_of(const Cone& cone, const FaceSurface& surface, double uncertainty);
[[nodiscard]] bool on_surface_of(const Plane& plane, const FaceSurface& surface, Point on_face,
                                 double uncertainty);

// Adds a face to the product's features: to the one on the same surface and side, or as a new one.
void add_face(Product& product, const FaceSurface& surface, std::span<const EdgeCurve> edges);

// Adds a free-form face that is a worn cylinder as a feature of its own.
void add_worn(Product& product, const WornSurface& worn, std::span<const EdgeCurve> edges);

// Merges patches and stretches and centres each axis on its feature.
void finish_features(Product& product);

// The direction or its opposite: the one whose largest component is positive.
[[nodiscard]] Direction canonical(Direction d);

// Puts station 0 of a finished cylinder into the middle of its stretches.
void centre_stations(Cylinder& cylinder);

}  // namespace spotblue
