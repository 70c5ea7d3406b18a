#pragma once
/// @file
/// A way out of a part's box that surely meets none of its faces.

#include "geometry/face_bounds.hpp"

namespace spotblue::proof {

/// Whether the ray from `start` along `d` certainly meets no face: its start then lies in air.
[[nodiscard]] bool is_free(const FaceBounds& part, Point start, Direction d);

}  // namespace spotblue::proof
