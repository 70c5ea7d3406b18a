#pragma once
// Every group of joined parts that is stopped both ways along a centre line, what stops it, and the
// closed loop of lengths that leaves it its play.

#include <cstddef>
#include <vector>

#include "group/axial/end_play_loop.hpp"
#include "group/turning/turns.hpp"
#include "spotblue/geometry/axial_stops.hpp"

namespace spotblue {

/// A group and its way to the part that stands still, each way: its own stop first.
struct EndPlay {
  std::size_t group = 0;   ///< of Groups::moves_with
  std::size_t ground = 0;  ///< group that stands still on this line
  CentreLineId centre_line{};
  std::vector<AxialStop> back, ahead;  ///< against and along the line
  bool closed = false;                 ///< whether the loop was found, face by face
  std::vector<LoopLength> loop;
};

/// A group that something stops one way only, or not at all.
struct Uncaptured {
  std::size_t group = 0;
  CentreLineId centre_line{};
  bool back = false, ahead = false;  ///< which way it is stopped
};

struct EndPlays {
  std::vector<EndPlay> captured;  ///< one a group and direction, by group
  std::vector<Uncaptured> open;
  std::size_t heaviest = 0;  ///< greatest volume of all that do not turn: it always stands still
};

/// Finds them.
///
/// On each centre line the group with the greatest volume among those on it stands still, leaving
/// out, where others remain, what turns and what the job wants end play of (unless that is the
/// greatest of the whole model that does not turn). A group may be
/// stopped by way of others that float.
[[nodiscard]] EndPlays find_end_plays(const DeclaredJob& declared, const Groups& groups,
                                      const Turns& turns, const PartLengths& lengths);

/// How far the group can go from where it is modelled, mm.
[[nodiscard]] double travel_mm(const std::vector<AxialStop>& stops);

}  // namespace spotblue
