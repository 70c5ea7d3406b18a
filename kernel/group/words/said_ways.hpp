#pragma once
// In which order parts go together, and what stands in their way.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kDirection{"way-direction", "({}, {}, {})"};
inline constexpr Said kAndPart{"way-and-part", "{}, {}"};
inline constexpr Said kStepInto{"way-step-into", "{} into {}, {} towards {}"};
inline constexpr Said kStepOver{"way-step-over", "{} over {}, {} towards {}"};
inline constexpr Said kStepTo{"way-step-to", "{} to {}, {} towards {}"};
inline constexpr Said kHoldsIn{"way-holds-in", "holds in {}"};
inline constexpr Said kWayForAll{"way-for-all", "a way in for every part"};
inline constexpr Said kStandTogether{"way-stand-together", "{} and {}"};
inline constexpr Said kInThisOrder{"way-in-this-order",
                                   "put together in this order, starting from {}"};
inline constexpr Said kInReverse{"way-in-reverse", "apart in reverse"};

inline constexpr Said kHoleTooSmall{"way-hole-too-small", "{} by {} towards {}: needs {}, has {}"};
inline constexpr Said kNoHole{"way-no-hole", "{} by {} towards {}: needs {}, has no hole"};
inline constexpr Said kNoWayAlong{"way-none-along", "{} has no way along the line past {}"};
inline constexpr Said kFromTheSide{
    "way-from-the-side", "whether it comes in from the side can not be told: look by eye"};
inline constexpr Said kNoWayIn{
    "way-none",
    "{} cannot be brought to its place past {}: open the bore, turn the shoulder down, split the "
    "part, or make the shoulder a ring of its own"};
inline constexpr Said kPast{"way-past", "{} past {} towards {}"};
inline constexpr Said kTooManyOrders{
    "way-too-many-orders", "too many parts on one line to try every order: check by hand"};
inline constexpr Said kPassesNotTold{"way-not-told",
                                     "it cannot be told whether {} passes {}: look by eye"};
inline constexpr Said kSayItSprings{"way-say-it-springs",
                                    "of a ring that is sprung in by hand say springs = true in its "
                                    "[[parts]] entry, of a part that is "
                                    "put round in halves split = true"};

inline constexpr Said kAlongCentreLine{
    "way-along-centre-line",
    "parts moved along their centre line, past each other, as rings about it"};
inline constexpr Said kOwnGeometry{"way-own-geometry", "own geometry"};
inline constexpr Said kOtherGroupsAway{"way-other-groups-away",
                                       "parts of other groups taken as not there"};

}  // namespace spotblue::said
