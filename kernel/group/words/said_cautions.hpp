#pragma once
// The usual cautions, where the work can hurt someone.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kPressCaution{
    "press-caution",
    "Pressing, heating or chilling parts can crack them, throw splinters and burn: guard the "
    "press, wear eye and hand protection, air the room when chilling, and follow your local rules "
    "and licensed practice; they come before this advice."};
inline constexpr Said kCastingCaution{
    "press-caution-casting",
    "Pressing, heating or chilling parts can crack them, throw splinters and burn: guard the "
    "press, wear eye and hand protection, air the room when chilling, and follow your local rules "
    "and licensed practice; they come before this advice. Castings may hide cracks, blowholes and "
    "old repairs: look them over and crack-test them before pressing or heating; the strength "
    "taken here is that of sound metal."};
inline constexpr Said kTurningCaution{
    "turning-caution",
    "Stop, lock out and block the machine before touching parts that turn; guards go back on "
    "before it runs; your local rules and licensed practice come before this advice."};
inline constexpr Said kBindCaution{
    "bind-caution",
    "Parts that bind when warm seize and can throw what they drive: stop the machine, guard it, "
    "and follow your local rules and licensed practice; they come before this advice."};
inline constexpr Said kGearCaution{
    "gear-caution",
    "Gears draw in fingers, sleeves and rags: turn the pair by hand with the power locked off, "
    "refit the guard before it runs, and follow your local rules."};

}  // namespace spotblue::said
