#pragma once
// The play of one group of parts relative to another, by the net of stops that it is of.

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "group/axial/stop_net.hpp"
#include "spotblue/mechanics/play_net.hpp"

namespace spotblue {

/// What the job wants of a play.
struct PlayWanted {
  Limits limits;
  std::optional<JobLine> line{};
};

/// The play of one group relative to another.
struct BodyPlay {
  std::size_t of = 0;                    ///< of Groups::moves_with
  std::size_t on = 0;                    ///< what it plays on ...
  bool on_stands = true;                 ///< ... which stands still on its line
  std::optional<std::size_t> carrier{};  ///< another that moves too and stops it both ways
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

/// Fills in all that the net says of the play: anew where the net is another.
/// @pre the net has both groups
void work_out_play(const DeclaredJob& declared, BodyPlay& play);

/// Fills in the stops that are met first from where all is modelled; false where it is not stopped
/// both ways.
[[nodiscard]] bool find_modelled_stops(BodyPlay& play);

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
