#pragma once
// What is said of a pair as it runs warm.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kRunningBasis{
    "running-basis",
    "rings one in another, plane stress (Lame), free expansion of each, weakest and strongest "
    "wall, each stretch by itself and as one ring with the metal beyond a joint's ends; bench {}, "
    "running {} where a part has none of its own; elastic"};
inline constexpr Said kMayBeLeft{"running-may-be-left", "from {} may be left when it runs: {}"};
inline constexpr Said kBinds{"running-binds",
                             "it binds when it runs, by up to {}: allow more clearance"};
inline constexpr Said kMayBind{
    "running-may-bind", "it may bind when it runs: {} clearance at the tightest; allow more"};
inline constexpr Said kPressedAtBench{
    "running-pressed-at-bench",
    "at the bench the two are pressed, by up to {}, at all their sizes: that is no running fit"};
inline constexpr Said kLeaveItSo{"running-leave-it-so", "leave it so: {} clearance when it runs"};

inline constexpr Said kPressureOver{
    "running-pressure-over", "pressure {} is over {}: a longer or larger bearing, or less load"};
inline constexpr Said kSpeedOver{"running-speed-over",
                                 "surface speed {} is over {}: a smaller diameter or fewer turns"};
inline constexpr Said kProductOver{
    "running-product-over",
    "pressure x speed {} is over {}: a longer bearing, less load or fewer turns"};
inline constexpr Said kPressureHeats{
    "running-pressure-heats",
    "pressure {} is over {}: it heats too much unless it runs no more than {} of the time"};
inline constexpr Said kSpeedHeats{
    "running-speed-heats",
    "surface speed {} is over {}: it heats too much unless it runs no more than {} of the time"};
inline constexpr Said kProductHeats{
    "running-product-heats",
    "pressure x speed {} is over {}: it heats too much unless it runs no more than {} of the time"};
inline constexpr Said kNoLimitsKnown{"running-no-limits", "no limits are known for {} of {}"};
inline constexpr Said kSteelOnSteel{
    "running-steel-on-steel",
    "steel on steel has no limits to go by: it galls; bush one of the two"};
inline constexpr Said kNoSpeedKnown{"running-no-speed",
                                    "no greatest speed is known for this pair of materials"};
}  // namespace spotblue::said
