#pragma once
// What is to be made to which limits, as it is drawn.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kBore{"make-bore", "bore the {} {} (drawn {})"};
inline constexpr Said kBoreBeforePressing{"make-bore-before-pressing",
                                          "bore the {} {} before pressing (drawn {})"};
inline constexpr Said kTurn{"make-turn", "turn the {} {} (drawn {})"};
inline constexpr Said kTurnBeforePressing{"make-turn-before-pressing",
                                          "turn the {} {} before pressing (drawn {})"};
inline constexpr Said kCutWidth{"make-cut-width", "cut the {} {} wide (drawn {})"};

}  // namespace spotblue::said
