#pragma once
// Parts that must stay clear of each other.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kWhereBetween{"keep-off-between", "{} and {}"};
inline constexpr Said kWhereIn{"keep-off-in", "{} in {}"};
inline constexpr Said kTheyTouch{"keep-off-touch", "they touch at {}: relieve one by {}"};
inline constexpr Said kOnlyApart{"keep-off-too-near", "only {} apart at {}: relieve one by {}"};
inline constexpr Said kMeasureGap{"keep-off-measure", "measure the gap at {} closer than +- {}"};
inline constexpr Said kMayComeTo{
    "keep-off-may-come",
    "they may come as near as {} at {}: hold the sizes or the play that it hangs on closer"};
inline constexpr Said kGapAsMeasured{"keep-off-as-measured", "measured"};
inline constexpr Said kGapAsDrawn{"keep-off-as-drawn", "as drawn"};
inline constexpr Said kGapAsMade{"keep-off-as-made",
                                 "at the sizes they may have, as made, assembled and running"};
inline constexpr Said kGapWithPlay{"keep-off-with-play",
                                   "when the parts are pushed together as far as others let them"};
inline constexpr Said kNoFacesNear{"keep-off-no-faces-near", "no faces near"};
inline constexpr Said kNoSolids{"keep-off-no-solids", "the model holds no solids to measure"};
inline constexpr Said kDistanceNotFound{"keep-off-distance-not-found",
                                        "Open CASCADE did not find the least distance: {}"};
inline constexpr Said kTryFeeler{"keep-off-try-feeler",
                                 "their least distance is not known: try it with a feeler of {}"};

inline constexpr Said kMustStayClear{"keep-off-must", "must stay clear{}"};
inline constexpr Said kMustStayClearFor{"keep-off-must-for", "must stay clear, {}{}"};
inline constexpr Said kLeastGap{
    "keep-off-least-gap",
    "least distance of the two solids, and the gaps of their seats at all sizes; how far the parts "
    "may travel from where they are drawn is counted only where nothing else stops them"};

}  // namespace spotblue::said
