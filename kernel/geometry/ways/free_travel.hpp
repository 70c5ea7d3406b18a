#pragma once
/// @file
/// How far a part can go along a line before it meets another, both seen as rings about the line.

#include <span>

#include "geometry/outline/passing.hpp"
#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/seats.hpp"

namespace spotblue::proof {

struct FreeTravel {
  double clear = 0.0;  ///< mm, >= 0: up to here the two are proved clear; infinite where for ever
  double meets = 0.0;  ///< mm, >= clear: here they do meet; infinite where that is not known
  double at = 0.0;     ///< station of the moving part's metal that meets the other, where it stands
};

/// Of slabs about one line, which `moving` goes along by `sense`; radial overlap within the bands
/// is none.
[[nodiscard]] FreeTravel free_travel(std::span<const Slab> moving, std::span<const Slab> still,
                                     Sense sense, std::span<const OverlapBand> bands);

/// Of two occurrences; what their threads and press fits overlap by is none.
[[nodiscard]] FreeTravel free_travel(const Model& model, const Seats& seats, OccurrenceId moving,
                                     OccurrenceId still, const Line& line, Sense sense);

}  // namespace spotblue::proof
