#pragma once
// How a length between two faces is known.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kLengthMeasured{"length-measured", "measured{}"};
inline constexpr Said kLengthLimits{"length-limits", "limits{}"};
inline constexpr Said kLengthSqueezed{"length-squeezed",
                                      "its thickness less what it is squeezed{}"};
inline constexpr Said kLengthSoft{"length-soft", "of a soft part: {} not given"};
inline constexpr Said kLengthAsFound{"length-as-found", "as found"};
inline constexpr Said kLengthAsSet{"length-as-set", "as set when the two were joined"};
inline constexpr Said kLengthSetByAnyFace{
    "length-set-by-any-face",
    "as set when the two are joined, by any of the faces that are drawn level, or by any at all"};
inline constexpr Said kLengthIsSet{"length-is-set", "as modelled; it is set{}"};
inline constexpr Said kLengthToBeSet{"length-to-be-set", "to be set"};
inline constexpr Said kLengthNoChain{"length-no-chain",
                                     "no chain of touching faces leads there: as modelled"};
inline constexpr Said kLengthGeneral{"length-general", "no limits given: ISO 2768-1 {}"};
inline constexpr Said kLengthNearest{
    "length-nearest",
    "no limits given, and none in ISO 2768-1 {} at this length: that of the nearest step"};

}  // namespace spotblue::said
