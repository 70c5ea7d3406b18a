#include "geometry/mockup/block_faces.hpp"

namespace spotblue {

int face_axis(PartFace face) {
  switch (face) {
    case PartFace::left:
    case PartFace::right:
      return 0;
    case PartFace::front:
    case PartFace::back:
      return 1;
    case PartFace::first:
    case PartFace::last:
      break;
  }
  return 2;
}

int face_sense(PartFace face) {
  return face == PartFace::last || face == PartFace::right || face == PartFace::back ? 1 : -1;
}

FacePoint face_size(const BlockPart& block, PartFace face) {
  switch (face_axis(face)) {
    case 0:
      return {block.size.y, block.size.z};
    case 1:
      return {block.size.x, block.size.z};
    default:
      return {block.size.x, block.size.y};
  }
}

Point face_point(PartFace face, FacePoint at, double station) {
  switch (face_axis(face)) {
    case 0:
      return {station, at.u, at.v};
    case 1:
      return {at.u, station, at.v};
    default:
      return {at.u, at.v, station};
  }
}

double face_station(const BlockPart& block, PartFace face) {
  if (face_sense(face) < 0) {
    return 0.0;
  }
  const int axis = face_axis(face);
  return axis == 0 ? block.size.x : axis == 1 ? block.size.y : block.size.z;
}

}  // namespace spotblue
