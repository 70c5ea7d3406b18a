#pragma once
// What an end play is: what moves, what stops it, by how much, and the lengths that make it so.

#include "check/duty/end_play_judge.hpp"

namespace spotblue {

/// Cones that seat the group on another part: they may stop it before any plane face does.
[[nodiscard]] Saying cones_that_seat(const EndPlayCase& found);
/// What stops the group, as it is modelled; without wants, outcome and basis.
[[nodiscard]] Finding end_play_described(const EndPlayCase& found);
/// The play by its lengths, and these.
/// @pre found.play.play.worst
void add_play_stack(const EndPlayCase& found, Finding& finding);
/// The play of sets drawn by lot; how many lie outside where that is judged.
void add_play_draw(const BodyPlay& play, Limits wanted, bool judged, Finding& finding);
/// As it is modelled the group may stand in what should stop it.
[[nodiscard]] Saying overlaps_as_modelled(const EndPlayCase& found);

}  // namespace spotblue
