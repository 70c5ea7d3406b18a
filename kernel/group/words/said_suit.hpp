#pragma once
// Sizes made to suit what exists, and wants that no size meets.

#include "spotblue/group/sentence.hpp"

namespace spotblue::said {

inline constexpr Said kFitOf{"suit-fit-of", "{} of {} and {}{}"};
inline constexpr Said kFitWithClearance{"suit-fit-with-clearance", "{}, clearance {}"};
inline constexpr Said kWantedSizeOf{"suit-wanted-size-of", "the wanted size {} of {}{}"};
inline constexpr Said kWantedWithin{"suit-wanted-within", "{}, {}"};

inline constexpr Said kAimAt{"suit-aim-at", "{}, aim at {}"};
inline constexpr Said kAimBeforePressing{"suit-aim-before-pressing",
                                         "{}, aim at {}, before it is pressed in"};
inline constexpr Said kAimThen{"suit-aim-then", "{}, aim at {}, before it is pressed in (then {})"};
inline constexpr Said kMakeFirst{
    "suit-make-first",
    "make it first: made and measured anywhere from {}, the rest can still be made to suit"};
inline constexpr Said kMakeAsNumber{"suit-make-as-number",
                                    "make it as number {} of {}: with the others made and measured "
                                    "its window is {} wide instead of {}"};
inline constexpr Said kNumberOf{"suit-number-of", "{} of {}"};

inline constexpr Said kCannotProve{"suit-cannot-prove",
                                   "a measurement of +- {} cannot prove it: measure closer"};
inline constexpr Said kFinishInPlace{
    "suit-finish-in-place", "that is its size once pressed in: {}, so finish the bore in place"};
inline constexpr Said kSuitsIfRestDoes{
    "suit-drawn-if-rest", "drawn at {} it suits only if the rest is then made to suit it"};
inline constexpr Said kSuitsNothing{"suit-drawn-suits-nothing",
                                    "drawn at {} it suits nothing the rest may be"};
inline constexpr Said kPressingMovesIt{
    "suit-pressing-moves", "pressing moves it or its mate, by how much is not known: {}"};

inline constexpr Said kClosesNotKnown{
    "suit-closes-not-known",
    "its bore closes when it is pressed into {}, by how much is not known: {}"};
inline constexpr Said kClosesBy{"suit-closes-by",
                                "pressed into {} its bore closes by {} to {} of the interference "
                                "left when roughness has taken {}"};
inline constexpr Said kClosesByRings{
    "suit-closes-by-rings", "thick rings in plane stress, {} to {} of both Rz (DIN 7190-1)"};

inline constexpr Said kSuitsNotBoth{
    "suit-not-both", "no size of {} suits both {} and {}: they miss each other by {}"};
inline constexpr Said kSuitsNotBothThrough{
    "suit-not-both-through",
    "no size of {} suits both {} and {} (by way of {}): they miss each other by {}"};
inline constexpr Said kAndWant{"suit-and-want", "{} and {}"};
inline constexpr Said kWidenOne{"suit-widen-one", "widen or change one of them"};
inline constexpr Said kOneBelowOther{
    "suit-one-below-other", "the largest size the one allows is below the least the other needs"};
inline constexpr Said kKnowMatesCloser{"suit-know-mates-closer",
                                       "no size of {} suits every size its mates may have by {}: "
                                       "know the mates closer by {} in all, or widen the fit"};
inline constexpr Said kMatesVary{"suit-mates-vary",
                                 "the sizes that exist may vary by more than the fit does"};

}  // namespace spotblue::said
