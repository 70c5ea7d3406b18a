#pragma once
/// @file
/// How much metal stands behind a radial seat: outside of the hub, bore of the shaft, by stretches.

#include <string>
#include <vector>

#include "spotblue/base/export.hpp"
#include "spotblue/base/interval.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue {

struct WallStretch {
  double from = 0.0, to = 0.0;
  double inner = 0.0;
  double outer = 0.0;
  Interval begins{}, ends{};
};
constexpr void describe(auto& fields, const WallStretch*) {
  fields.value("WallStretch", "A stretch of a seat over which the wall is taken as one plain ring.")
      .member("start_mm", &WallStretch::from, "station on the seat's axis")
      .member("end_mm", &WallStretch::to, "station on the seat's axis, past the start")
      .member("inner_mm", &WallStretch::inner, "diameter; 0 where the part is solid")
      .member("outer_mm", &WallStretch::outer, "diameter, over the inner")
      .member("begins_mm", &WallStretch::begins,
              "diameters at which the metal begins: of the plain ring, and of the deepest that is "
              "cut into it from inside")
      .member("ends_mm", &WallStretch::ends,
              "diameters at which it ends: the nearest place round the axis and the farthest. The "
              "wall is no weaker than the ring from begins' high to ends' low and no stronger than "
              "the one from begins' low to ends' high; where the first is none it is cut through");
}

struct Wall {
  std::vector<WallStretch> stretches;
  std::vector<std::string> blind_spots;
};
constexpr void describe(auto& fields, const Wall*) {
  fields.value("Wall", "The wall of one of the two parts of a seat.")
      .member("stretches", &Wall::stretches,
              "ascending; stretches without contact surface left out")
      .member("blind_spots", &Wall::blind_spots,
              "what the rings do not show, each a clause of its own: \"slot 6 is cut into the "
              "bore\"");
}

/// The wall round the seat's hole, from the hub's own faces.
///
/// `outer` is twice the least distance from the axis at which the metal ends anywhere round the
/// stretch: a flat, a side of a block or a hole beside the bore counts as if it went all round.
/// `inner` is the bore, or the floor of a groove turned into it. Tapers are cut in short stretches
/// and taken at their thinnest. Keyways and holes through the wall are blind spots; where no face
/// bounds the wall the part's box does, and a blind spot says so.
[[nodiscard]] SPOTBLUE_EXPORT Wall wall_of_hub(const Model& model, const RadialSeat& seat);

/// The wall inside the seat's shaft: `outer` the shaft, or the floor of a groove turned into it,
/// `inner` the widest bore about the axis. Keyseats, flats and holes beside or across the axis are
/// blind spots.
[[nodiscard]] SPOTBLUE_EXPORT Wall wall_of_shaft(const Model& model, const RadialSeat& seat);

}  // namespace spotblue
