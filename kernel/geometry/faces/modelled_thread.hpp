#pragma once
// Screw threads that are modelled turn by turn: helical faces, recognised by their axis, lead and
// crests, so that they can be compared as threads are that are drawn as plain cylinders.

#include <BRepAdaptor_Surface.hxx>
#include <cstddef>
#include <span>
#include <vector>

#include "geometry/surfaces/shell_facing.hpp"
#include "spotblue/geometry/model.hpp"

namespace spotblue {

// Places and tangents on a free-form surface, over its own parameters; empty for one without end.
[[nodiscard]] std::vector<SurfaceSlope> slopes_of(const BRepAdaptor_Surface& surface);

// Of one solid. The threaded stretch filled up to the crests holds all the metal that is there.
struct ModelledThread {
  Line axis;
  double lead = 0.0;               // mm a turn; negative for a left-hand thread
  Side side = Side::external;      // of a screw, or of a nut
  double crest = 0.0;              // radius: the greatest of a screw, the least of a nut
  double from = 0.0, to = 0.0;     // stations on the axis
  std::vector<std::size_t> faces;  // all that lie between crest and root: flanks, flats, run-out
};

// Of faces whose sides are settled, about the axes of the round faces among them. A full turn at
// least, the lead no more than 0.6 of the crests' diameter: knurls and worms of many starts are
// none.
[[nodiscard]] std::vector<ModelledThread> modelled_threads(std::span<const ReadFace> faces);

// The stretch as a plain cylinder of its crests, with two full circles for edges.
[[nodiscard]] ReadFace crest_face(const ModelledThread& thread);

}  // namespace spotblue
