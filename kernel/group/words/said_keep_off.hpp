#pragma once
// Parts that must stay clear of each other.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kWhereBetween{"keep-off-between", "{} and {}"};
inline constexpr Said kWhereIn{"keep-off-in", "{} in {}"};
inline constexpr Said kTheyTouch{"keep-off-touch", "they touch at {}: relieve one by {}"};
inline constexpr Said kOnlyApart{"keep-off-too-near", "only {} apart at {}: relieve one by {}"};
inline constexpr Said kMeasureGap{"keep-off-measure", "measure the gap at {} closer than +- {}"};
inline constexpr Said kNoFacesNear{"keep-off-no-faces-near", "no faces near"};
inline constexpr Said kTryFeeler{
    "keep-off-try-feeler",
    "no faces that look at each other come within {} along or {} across the axis, but one part "
    "reaches beside the other and corners are not searched: try it with a feeler of {}"};

inline constexpr Said kMustStayClear{"keep-off-must", "must stay clear{}"};
inline constexpr Said kMustStayClearFor{"keep-off-must-for", "must stay clear, {}{}"};
inline constexpr Said kLeastGap{"keep-off-least-gap",
                                "least gap of the faces that look at each other, and of fouls"};

}  // namespace spotblue::said
