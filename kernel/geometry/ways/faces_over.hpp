#pragma once
/// @file
/// What of a product's faces stands over a stretch of an axis, and which way it looks.

#include <span>
#include <string>
#include <vector>

#include "geometry/faces/face_bounds.hpp"

namespace spotblue::proof {

/// Outward: air is on the side away from the axis. Unknown: fillets and free-form faces.
enum class Looks { outward, inward, unknown };

/// A face, or the part of it that looks one way.
struct FaceOver {
  Looks looks = Looks::outward;
  double least = 0.0, greatest = 0.0;  ///< distances from the axis, mm
  bool ring = false;                   ///< all the way round the axis
  std::string name;                    ///< of the feature; "a rounded face" for other faces
};

/// The bounds of a product with the names of its features beside them.
struct NamedBounds {
  FaceBounds bounds;
  std::vector<std::string> patch_names;  ///< of bounds.patches
  std::vector<std::string> flat_names;   ///< of bounds.flats
};
[[nodiscard]] NamedBounds named_bounds_of(const Product& product);

/// The faces over the stretch, each as near and as far as it gets there. Faces square to the axis
/// stand over no stretch. Cylinders and planes are exact, all else conservative.
[[nodiscard]] std::vector<FaceOver> faces_over(const NamedBounds& part, const Line& axis,
                                               Interval stretch);

/// Stations at which some face begins or ends, and tapers in short steps, inside `window`.
[[nodiscard]] std::vector<double> face_stations(const NamedBounds& part, const Line& axis,
                                                Interval window);

}  // namespace spotblue::proof
