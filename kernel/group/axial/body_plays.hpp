#pragma once
// The play of every group of parts that is stopped both ways along a direction, over all its stops.

#include <cstddef>
#include <vector>

#include "group/axial/body_play.hpp"
#include "group/axial/part_setting.hpp"
#include "group/turning/turns.hpp"

namespace spotblue {

/// A group that something stops one way only, or not at all.
struct Uncaptured {
  std::size_t of = 0, on = 0;
  CentreLineId centre_line{};
  bool back = false, ahead = false;  ///< which way it is stopped
};

struct BodyPlays {
  std::vector<BodyPlay> captured;  ///< one a group, what it plays on and direction; by group
  std::vector<Uncaptured> open;
  std::vector<LineStop> stops;        ///< by centre line
  std::vector<PartSetting> settings;  ///< one a part that is set and direction
  std::size_t heaviest = 0;  ///< greatest volume of all that do not turn: it always stands still
};

/// Finds them.
///
/// A group plays on what [[wants]] say, else on what stands still on its line; where nothing is
/// wanted of it and one other that moves stops it both ways, on that one: what carries it may float
/// as it likes.
/// @throws Error bad_input as PartLengths; stopped.
[[nodiscard]] BodyPlays find_body_plays(const DeclaredJob& declared, const Groups& groups,
                                        const Turns& turns);

}  // namespace spotblue
