#pragma once
// A part near a possible seat.

#include "geometry/faces/face_bounds.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

struct NearPart {
  const Product* product = nullptr;
  const proof::FaceBounds* faces = nullptr;  // of the product
  Frame frame;                               // into the frame of the pair's first product
};

}  // namespace spotblue
