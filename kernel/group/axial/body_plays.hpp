#pragma once
// The play of every group of parts that is stopped both ways along a direction, over all its stops.

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "group/axial/part_setting.hpp"
#include "group/axial/stop_net.hpp"
#include "group/turning/turns.hpp"
#include "spotblue/mechanics/play_net.hpp"

namespace spotblue {

/// What the job wants of a play.
struct PlayWanted {
  Limits limits;
  std::optional<int> line{};
};

/// The play of one group relative to another.
struct BodyPlay {
  std::size_t of = 0;     ///< of Groups::moves_with
  std::size_t on = 0;     ///< what it plays on ...
  bool on_stands = true;  ///< ... which stands still on its line
  CentreLineId centre_line{};
  /// As modelled, through whatever floats between: the group's own stop first. `a` looks ahead.
  std::vector<AxialStop> back, ahead;
  std::vector<PlayWanted> wants;
  bool of_mesh = false;                ///< of two gears that run together
  std::shared_ptr<const StopNet> net;  ///< what is set stands in its window where wants give one
  RelativePlay play;
  bool closed = false;               ///< whether the lengths of its loops are known, face by face
  std::vector<StackLength> lengths;  ///< of the governing loop, in its senses
  std::optional<Limits> warm;        ///< at worst; nothing where all stays at bench temperature ...
  std::string warm_unknown;          ///< ... or where a part's material, named here, is not known
};

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

/// The part that gives a group its name: the one with the greatest volume, the first of several.
[[nodiscard]] OccurrenceId main_part(const DeclaredJob& declared, const Groups& groups,
                                     std::size_t group);

/// How far the group can go from where it is modelled, mm.
[[nodiscard]] double travel_mm(const std::vector<AxialStop>& stops);

/// The sizes that one length of the net may have so that the play comes out within the limits
/// whatever the others are; nothing where there are none.
[[nodiscard]] std::optional<Limits> room_for(const BodyPlay& play, const StackLength& length,
                                             Limits wanted);

}  // namespace spotblue
