#pragma once
// The six faces of a block and positions on them.

#include "geometry/mockup/mockup_check.hpp"
#include "spotblue/geometry/mockup_part.hpp"

namespace spotblue {

/// The part axis a face is square to: 0, 1, 2.
[[nodiscard]] int face_axis(PartFace face);
/// +1 when it bounds the block upwards on that axis, else -1.
[[nodiscard]] int face_sense(PartFace face);
/// Extents of a block's face in its (u, v).
[[nodiscard]] FacePoint face_size(const BlockPart& block, PartFace face);
/// A point of the face plane whose station on the face's axis is `station`.
[[nodiscard]] Point face_point(PartFace face, FacePoint at, double station);
/// Station of a block's face on its axis.
[[nodiscard]] double face_station(const BlockPart& block, PartFace face);

}  // namespace spotblue
