#pragma once
// Sentences that many others stand in, or that nothing of ours is said in.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kPartNamed{"part-named", "{}"};
inline constexpr Said kAsItIs{"as-it-is", "{}"};
inline constexpr Said kLeaveAsItIs{"leave-as-it-is", "leave it as it is"};

}  // namespace spotblue::said
