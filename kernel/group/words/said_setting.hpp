#pragma once
// Where a nut, collar or shim may be set.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kSetBy{"setting-by", "set{}"};
inline constexpr Said kSettingFormula{
    "setting-formula", "every end play wanted within its limits, all other lengths at their worst"};
inline constexpr Said kHalfAThread{
    "setting-half-thread",
    "half the diameter of thread left where [[threads]] says no other: common practice, no source"};
inline constexpr Said kPlayWanted{"setting-play-wanted", "{} on {}, {}{}"};
inline constexpr Said kOrWithin{"setting-or-within", "or {}"};

inline constexpr Said kSettingMeets{"setting-meets", "{} meets {} at {}"};
inline constexpr Said kSettingMayMeet{"setting-may-meet",
                                      "{} may meet {} from {} on: their shapes do not tell"};
inline constexpr Said kGoesNoFurther{"setting-no-further", "it goes no further: {}"};
inline constexpr Said kRunOut{
    "setting-run-out",
    "it would stand within a pitch of where its thread ends at larger metal: see that the thread "
    "is cut full so far, or turn a groove (choice of this program, no source)"};
inline constexpr Said kNoRoomToSet{"setting-no-room", "nothing is left of where it may be set: {}"};

inline constexpr Said kSetIt{"setting-set", "set {} {}"};
inline constexpr Said kNoWidthToSet{
    "setting-no-width",
    "only {} at {} would hold what is wanted whatever the other lengths are, and nothing beside "
    "it: hold them closer, or set it by the play that you measure"};
inline constexpr Said kSetTurns{"setting-turns", "{} turns of its thread from end to end"};
inline constexpr Said kThreadOff{"setting-thread-off", "its thread is off before it is set so"};
inline constexpr Said kThreadShort{"setting-thread-short",
                                   "{} of thread left is less than the {} that is enough"};
inline constexpr Said kNoSettingHolds{"setting-holds-none",
                                      "no setting holds {} whatever the other lengths are: measure "
                                      "them closer, or set it by the play "
                                      "that you measure"};
inline constexpr Said kSettingsContradict{
    "setting-contradiction",
    "no setting holds all of these whatever the other lengths are, {}: change one of them"};
inline constexpr Said kSettingWithoutThread{
    "setting-no-thread",
    "the model shows no thread of it, so how far it goes is not known: give its range"};
inline constexpr Said kSettingForNothing{
    "setting-for-nothing",
    "no end play that is wanted goes by it: say in [[wants]] what it is set for"};
inline constexpr Said kSettingTooManyWays{
    "setting-too-many", "too many stops could end the plays: join in [[fixed]] what is held"};
inline constexpr Said kSettingStopsNothing{
    "setting-stops-nothing",
    "no plane face of it stops a part that is captured: see what it is to stop, or judge it by "
    "hand"};

}  // namespace spotblue::said
